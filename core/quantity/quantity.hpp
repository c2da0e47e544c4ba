// The room `quantity`: numbers that know their unit.
//
// A quantity holds one double in one unit, privately. A factory that names the unit makes it and an
// accessor that names the unit reads it, so a bare number never enters or leaves a function. Only
// quantities of one kind add, subtract and compare; a ratio of two is a plain number; products that
// a source defines are written out as named functions where the source is cited.
//
// Kinds that are easy to mistake for one another are different types:
//   GaugePressure / AbsolutePressure          (they differ by the air around us)
//   Temperature / TemperatureDifference       (20 °C is a point, 20 K a step)
//   Mass / Force                              (kg on the scales, newtons on the road)
//
// Range: any finite double. Nothing here throws. NaN and infinity are kept out on reading, in
// read.hpp. Exact round trips: the unit a type stores in (named beside each type); others are good
// to one or two units in the last place.
#pragma once

#include <compare>

namespace treadwater {

// Exact by definition: the yard and pound agreement of 1959 (0.9144 m, 0.453 592 37 kg) and the
// standard acceleration of free fall (3rd CGPM, 1901). Source: BIPM, SI Brochure, 9th ed., 2019,
// and NIST SP 811, 2008, appendix B.8; known from memory, checked by the published roundings
// 1 psi = 6.894757 kPa and 1 lbf = 4.448222 N.
namespace exact {
inline constexpr double metres_per_inch = 0.0254;
inline constexpr double metres_per_foot = 0.3048;
inline constexpr double metres_per_mile = 1609.344;
inline constexpr double metres_per_nautical_mile = 1852.0;
inline constexpr double kilograms_per_pound = 0.45359237;
inline constexpr double standard_gravity = 9.80665;
inline constexpr double seconds_per_hour = 3600.0;
inline constexpr double newtons_per_pound_force = kilograms_per_pound * standard_gravity;
inline constexpr double pascals_per_psi =
    newtons_per_pound_force / (metres_per_inch * metres_per_inch);
inline constexpr double pascals_per_bar = 100000.0;
inline constexpr double kelvin_at_zero_celsius = 273.15;
}  // namespace exact

// One kind of quantity. `Kind` is an empty tag; the stored number is in the kind's own unit.
template <class Kind>
class Quantity {
 public:
  constexpr Quantity() = default;
  static constexpr Quantity stored(double value) { return Quantity(value); }
  constexpr double stored() const { return value_; }

  friend constexpr Quantity operator+(Quantity a, Quantity b) {
    return Quantity(a.value_ + b.value_);
  }
  friend constexpr Quantity operator-(Quantity a, Quantity b) {
    return Quantity(a.value_ - b.value_);
  }
  friend constexpr Quantity operator*(Quantity a, double k) { return Quantity(a.value_ * k); }
  friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(k * a.value_); }
  friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.value_ / k); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }
  friend constexpr auto operator<=>(Quantity a, Quantity b) = default;

 private:
  explicit constexpr Quantity(double value) : value_(value) {}
  double value_ = 0.0;
};

using Length = Quantity<struct LengthKind>;                                // metres
using Area = Quantity<struct AreaKind>;                                    // square metres
using Speed = Quantity<struct SpeedKind>;                                  // kilometres an hour
using Mass = Quantity<struct MassKind>;                                    // kilograms
using Force = Quantity<struct ForceKind>;                                  // newtons
using Stiffness = Quantity<struct StiffnessKind>;                          // newtons a metre
using GaugePressure = Quantity<struct GaugePressureKind>;                  // kilopascals
using AbsolutePressure = Quantity<struct AbsolutePressureKind>;            // kilopascals
using RainIntensity = Quantity<struct RainIntensityKind>;                  // millimetres an hour
using TemperatureDifference = Quantity<struct TemperatureDifferenceKind>;  // kelvin
using Duration = Quantity<struct DurationKind>;                            // seconds
using Volume = Quantity<struct VolumeKind>;                                // cubic metres
using Density = Quantity<struct DensityKind>;    // kilograms a cubic metre
using MassFlow = Quantity<struct MassFlowKind>;  // kilograms a second

// A point on the temperature scale, stored in kelvin. Two points differ by a
// TemperatureDifference; two points do not add.
class Temperature {
 public:
  constexpr Temperature() = default;
  static constexpr Temperature stored(double kelvin) { return Temperature(kelvin); }
  constexpr double stored() const { return kelvin_; }

  friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) {
    return TemperatureDifference::stored(a.kelvin_ - b.kelvin_);
  }
  friend constexpr Temperature operator+(Temperature a, TemperatureDifference d) {
    return Temperature(a.kelvin_ + d.stored());
  }
  friend constexpr Temperature operator-(Temperature a, TemperatureDifference d) {
    return Temperature(a.kelvin_ - d.stored());
  }
  friend constexpr auto operator<=>(Temperature a, Temperature b) = default;

 private:
  explicit constexpr Temperature(double kelvin) : kelvin_(kelvin) {}
  double kelvin_ = exact::kelvin_at_zero_celsius;
};

// ---- length ----
constexpr Length metres(double v) { return Length::stored(v); }
constexpr Length millimetres(double v) { return Length::stored(v / 1000.0); }
constexpr Length inches(double v) { return Length::stored(v * exact::metres_per_inch); }
constexpr Length kilometres(double v) { return Length::stored(v * 1000.0); }
constexpr Length miles(double v) { return Length::stored(v * exact::metres_per_mile); }
constexpr Length feet(double v) { return Length::stored(v * exact::metres_per_foot); }
constexpr Length thirty_seconds(double v) { return inches(v / 32.0); }
constexpr double in_metres(Length l) { return l.stored(); }
constexpr double in_millimetres(Length l) { return l.stored() * 1000.0; }
constexpr double in_inches(Length l) { return l.stored() / exact::metres_per_inch; }
constexpr double in_kilometres(Length l) { return l.stored() / 1000.0; }
constexpr double in_feet(Length l) { return l.stored() / exact::metres_per_foot; }
constexpr double in_thirty_seconds(Length l) { return 32.0 * in_inches(l); }

// ---- area ----
constexpr Area square_metres(double v) { return Area::stored(v); }
constexpr Area square_centimetres(double v) { return Area::stored(v / 10000.0); }
constexpr double in_square_metres(Area a) { return a.stored(); }
constexpr double in_square_centimetres(Area a) { return a.stored() * 10000.0; }
constexpr double in_square_inches(Area a) {
  return a.stored() / (exact::metres_per_inch * exact::metres_per_inch);
}
constexpr Area rectangle(Length a, Length b) { return square_metres(in_metres(a) * in_metres(b)); }

// ---- volume, density, flow ----
constexpr Volume cubic_metres(double v) { return Volume::stored(v); }
constexpr Volume litres(double v) { return Volume::stored(v / 1000.0); }
constexpr double in_cubic_metres(Volume v) { return v.stored(); }
constexpr double in_litres(Volume v) { return v.stored() * 1000.0; }
constexpr Density kilograms_per_cubic_metre(double v) { return Density::stored(v); }
constexpr double in_kilograms_per_cubic_metre(Density d) { return d.stored(); }
constexpr MassFlow kilograms_per_second(double v) { return MassFlow::stored(v); }
constexpr double in_kilograms_per_second(MassFlow m) { return m.stored(); }

// ---- time ----
constexpr Duration seconds(double v) { return Duration::stored(v); }
constexpr Duration minutes(double v) { return Duration::stored(v * 60.0); }
constexpr Duration days(double v) { return Duration::stored(v * 24.0 * exact::seconds_per_hour); }
// A twelfth of the mean Gregorian year, 365.2425 days.
constexpr Duration months(double v) { return days(v * 365.2425 / 12.0); }
constexpr double in_seconds(Duration t) { return t.stored(); }

// ---- speed ----
inline constexpr double kmh_per_mph = exact::metres_per_mile / 1000.0;
constexpr Speed kilometres_per_hour(double v) { return Speed::stored(v); }
constexpr Speed miles_per_hour(double v) { return Speed::stored(v * kmh_per_mph); }
constexpr Speed knots(double v) {
  return Speed::stored(v * exact::metres_per_nautical_mile / 1000.0);
}
constexpr double in_kilometres_per_hour(Speed s) { return s.stored(); }
constexpr Speed metres_per_second(double v) { return Speed::stored(v * 3.6); }
constexpr double in_miles_per_hour(Speed s) { return s.stored() / kmh_per_mph; }
constexpr double in_metres_per_second(Speed s) { return s.stored() / 3.6; }
constexpr Length travelled(Speed s, Duration t) {
  return metres(in_metres_per_second(s) * in_seconds(t));
}

// ---- mass and force ----
constexpr Mass kilograms(double v) { return Mass::stored(v); }
constexpr Mass pounds(double v) { return Mass::stored(v * exact::kilograms_per_pound); }
constexpr double in_kilograms(Mass m) { return m.stored(); }
constexpr double in_pounds(Mass m) { return m.stored() / exact::kilograms_per_pound; }
constexpr Force newtons(double v) { return Force::stored(v); }
constexpr double in_newtons(Force f) { return f.stored(); }
// Weight of a mass under standard gravity.
constexpr Force weight(Mass m) { return newtons(in_kilograms(m) * exact::standard_gravity); }

// ---- stiffness ----
constexpr Stiffness newtons_per_millimetre(double v) { return Stiffness::stored(v * 1000.0); }
constexpr Stiffness kilograms_force_per_millimetre(double v) {
  return newtons_per_millimetre(v * exact::standard_gravity);
}
constexpr double in_newtons_per_metre(Stiffness k) { return k.stored(); }
constexpr double in_newtons_per_millimetre(Stiffness k) { return k.stored() / 1000.0; }

// ---- pressure ----
constexpr GaugePressure kilopascals(double v) { return GaugePressure::stored(v); }
constexpr GaugePressure bars(double v) {
  return GaugePressure::stored(v * exact::pascals_per_bar / 1000.0);
}
constexpr GaugePressure psi(double v) {
  return GaugePressure::stored(v * exact::pascals_per_psi / 1000.0);
}
constexpr double in_kilopascals(GaugePressure p) { return p.stored(); }
constexpr double in_bars(GaugePressure p) { return p.stored() * 1000.0 / exact::pascals_per_bar; }
constexpr double in_psi(GaugePressure p) { return p.stored() * 1000.0 / exact::pascals_per_psi; }
constexpr AbsolutePressure kilopascals_absolute(double v) { return AbsolutePressure::stored(v); }
constexpr double in_kilopascals_absolute(AbsolutePressure p) { return p.stored(); }
// The only two ways from one kind of pressure to the other: say what air surrounds the tyre.
constexpr AbsolutePressure absolute(GaugePressure p, AbsolutePressure ambient) {
  return kilopascals_absolute(in_kilopascals(p) + in_kilopascals_absolute(ambient));
}
constexpr GaugePressure gauge(AbsolutePressure p, AbsolutePressure ambient) {
  return kilopascals(in_kilopascals_absolute(p) - in_kilopascals_absolute(ambient));
}

// ---- rain ----
constexpr RainIntensity millimetres_per_hour(double v) { return RainIntensity::stored(v); }
constexpr RainIntensity inches_per_hour(double v) {
  return RainIntensity::stored(v * exact::metres_per_inch * 1000.0);
}
constexpr double in_millimetres_per_hour(RainIntensity i) { return i.stored(); }
constexpr double in_inches_per_hour(RainIntensity i) {
  return i.stored() / (exact::metres_per_inch * 1000.0);
}

// ---- temperature ----
constexpr Temperature kelvin(double v) { return Temperature::stored(v); }
constexpr Temperature celsius(double v) {
  return Temperature::stored(v + exact::kelvin_at_zero_celsius);
}
constexpr Temperature fahrenheit(double v) { return celsius((v - 32.0) / 1.8); }
constexpr double in_kelvin(Temperature t) { return t.stored(); }
constexpr double in_celsius(Temperature t) { return t.stored() - exact::kelvin_at_zero_celsius; }
constexpr TemperatureDifference kelvin_difference(double v) {
  return TemperatureDifference::stored(v);
}
constexpr double in_kelvin(TemperatureDifference d) { return d.stored(); }

}  // namespace treadwater
