#include "core/quantity/write.hpp"

#include <cmath>
#include <cstdlib>

#include "core/quantity/text.hpp"

namespace treadwater {
namespace {

bool uses_miles(UnitSystem units) { return units != UnitSystem::metric; }

thread_local std::string_view sign_spoken = ".";

std::string to_two_digits(double value, double (*rounded)(double)) {
  double step = 1.0;
  while (value >= 100.0 * step && step < 1e7) step *= 10.0;
  return fixed(rounded(value / step) * step, 0);
}
double nearest(double value) { return std::round(value); }
double upwards(double value) { return std::ceil(value); }

// As exact as a number can be from 10^-22 to 10^22; the C library's pow has large tables.
double power_of_ten(int n) {
  double power = 1.0;
  for (int i = 0; i < std::abs(n); ++i) power *= 10.0;
  return n < 0 ? 1.0 / power : power;
}

// The value of its last digit; nothing for zero and non-finite numbers.
double last_digit(double value, int digits) {
  if (value == 0.0 || !std::isfinite(value)) return 0.0;
  return power_of_ten(static_cast<int>(std::floor(std::log10(std::fabs(value)))) - digits + 1);
}

}  // namespace

std::optional<UnitSystem> find_unit_system(std::string_view id) {
  if (id == "metric") return UnitSystem::metric;
  if (id == "uk") return UnitSystem::uk;
  if (id == "us") return UnitSystem::us;
  return std::nullopt;
}

void use_decimal_sign(std::string_view sign) { sign_spoken = sign; }
std::string_view decimal_sign() { return sign_spoken; }

// Written out here because printf's handling of doubles is a twentieth of the page's module.
std::string fixed(double value, int decimals) {
  if (!(std::fabs(value) < 1e9)) return "–";
  double scale = 1.0;
  for (int i = 0; i < decimals; ++i) scale *= 10.0;
  const long long scaled = std::llround(std::fabs(value) * scale);
  const auto unit = static_cast<long long>(scale);
  std::string text = std::to_string(scaled / unit);
  if (decimals > 0) {
    const std::string fraction = std::to_string(scaled % unit);
    text += decimal_sign();
    text.append(static_cast<std::size_t>(decimals) - fraction.size(), '0');
    text += fraction;
  }
  if (value < 0.0 && scaled != 0) text.insert(text.begin(), '-');
  return text;
}

std::string trimmed(double value, int decimals) {
  std::string text = fixed(value, decimals);
  if (decimals <= 0 || !is_digit(text.back())) return text;
  while (text.back() == '0') text.pop_back();
  if (!is_digit(text.back())) text.resize(text.size() - decimal_sign().size());
  return text;
}

std::string significant(double value, int digits) {
  if (value == 0.0) return "0";
  if (!std::isfinite(value)) return fixed(value, 0);
  const int magnitude = static_cast<int>(std::floor(std::log10(std::fabs(value))));
  const int decimals = digits - 1 - magnitude;
  if (decimals >= 0) return fixed(value, decimals);
  const double step = power_of_ten(-decimals);
  return fixed(std::round(value / step) * step, 0);
}

// The nudges keep 5.0 at 5.0 after its trip through other units.
std::string significant_at_most(double value, int digits) {
  const double step = last_digit(value, digits);
  return significant(step > 0.0 ? std::floor(value / step + 1e-6) * step : value, digits);
}

std::string significant_at_least(double value, int digits) {
  const double step = last_digit(value, digits);
  return significant(step > 0.0 ? std::ceil(value / step - 1e-6) * step : value, digits);
}

std::string write_signed(double change, int decimals) {
  const std::string text = fixed(change, decimals);
  return change > 0.0 ? "+" + text : text;
}

std::string write(GaugePressure p, UnitSystem units) {
  const std::string kpa = fixed(in_kilopascals(p), 0) + " kPa";
  if (units == UnitSystem::metric) return fixed(in_bars(p), 2) + " bar (" + kpa + ")";
  return fixed(in_psi(p), 0) + " psi (" + kpa + ")";
}

std::string write_at_most(GaugePressure p, UnitSystem units) {
  const auto down = [](double shown) { return std::floor(shown + 1e-6); };
  const GaugePressure whole = kilopascals(down(in_kilopascals(p)));
  if (units == UnitSystem::metric) return write(whole, units);
  return fixed(down(in_psi(p)), 0) + " psi (" + fixed(in_kilopascals(whole), 0) + " kPa)";
}

std::string write_at_least(GaugePressure p, UnitSystem units) {
  // The nudge keeps 32 psi at 32 after its trip through kPa.
  const auto up = [](double shown) { return std::ceil(shown - 1e-6); };
  if (units != UnitSystem::metric) p = psi(up(in_psi(p)));
  return write(kilopascals(up(in_kilopascals(p))), units);
}

std::string write(Mass m, UnitSystem units) {
  return units == UnitSystem::us ? fixed(in_pounds(m), 0) + " lb"
                                 : fixed(in_kilograms(m), 0) + " kg";
}

std::string write_at_most(Mass m, UnitSystem units) {
  const auto down = [](double shown) { return std::floor(shown + 1e-6); };
  return write(
      units == UnitSystem::us ? pounds(down(in_pounds(m))) : kilograms(down(in_kilograms(m))),
      units);
}

std::string write_at_least(Mass m, UnitSystem units) {
  const auto up = [](double shown) { return std::ceil(shown - 1e-6); };
  return write(units == UnitSystem::us ? pounds(up(in_pounds(m))) : kilograms(up(in_kilograms(m))),
               units);
}

std::string write_number(Speed v, UnitSystem units) {
  return fixed(uses_miles(units) ? in_miles_per_hour(v) : in_kilometres_per_hour(v), 0);
}

std::string write(Speed v, UnitSystem units) {
  return write_number(v, units) + (uses_miles(units) ? " mph" : " km/h");
}

std::string write_depth(Length l, UnitSystem units) {
  if (units == UnitSystem::us) return trimmed(in_thirty_seconds(l), 1) + "/32 in";
  return trimmed(in_millimetres(l), 1) + " mm";
}

std::string write_worn(Length l, UnitSystem units) {
  if (units == UnitSystem::us) return fixed(in_thirty_seconds(l), 1) + "/32 in";
  return fixed(in_millimetres(l), 1) + " mm";
}

std::string write_water(Length l, UnitSystem units) {
  if (units == UnitSystem::us) return fixed(in_inches(l), 2) + " in";
  return trimmed(in_millimetres(l), 1) + " mm";
}

std::string write_size(Length l, UnitSystem units, int decimals) {
  if (units == UnitSystem::us) return fixed(in_inches(l), decimals + 1) + " in";
  return fixed(in_millimetres(l), decimals) + " mm";
}

std::string write_signed_size(Length change, UnitSystem units, int decimals) {
  const std::string text = write_size(change, units, decimals);
  return change > metres(0.0) ? "+" + text : text;
}

std::string write_signed_percent(double percent, int decimals) {
  return write_signed(percent, decimals) + " %";
}

std::string write_rim(Length width) { return trimmed(in_millimetres(width) / 25.4, 1) + " in"; }

std::string write_wheel(Mass m) { return fixed(in_kilograms(m), 1) + " kg"; }

std::string write_signed_wheel(Mass change) {
  return write_signed(in_kilograms(change), 1) + " kg";
}

std::string write(Area a, UnitSystem units) {
  if (units == UnitSystem::us) return significant(in_square_inches(a), 2) + " sq in";
  return significant(in_square_centimetres(a), 2) + " cm²";
}

std::string write(Temperature t, UnitSystem units) {
  const Shown now = shown(t, units);
  return joined({fixed(now.value, 0), " ", now.unit});
}

std::string write_kelvins(double difference, UnitSystem units) {
  return units == UnitSystem::us ? fixed(difference * 1.8, 0) + " °F"
                                 : fixed(difference, 0) + " °C";
}

std::string write_distance(Length l, UnitSystem units) {
  const Shown far = shown_distance(l, units);
  return joined({trimmed(far.value, far.value < 10.0 ? 1 : 0), " ", far.unit});
}

std::string write_whole_distance(Length l, UnitSystem units) {
  const Shown far = shown_distance(l, units);
  return joined({fixed(far.value, 0), " ", far.unit});
}

std::string write_estimated_number(Length l, UnitSystem units) {
  return to_two_digits(shown_distance(l, units).value, nearest);
}

std::string write_estimated_distance(Length l, UnitSystem units) {
  return joined({write_estimated_number(l, units), " ", shown_distance(l, units).unit});
}

std::string write_longest_distance(Length l, UnitSystem units) {
  const Shown far = shown_distance(l, units);
  return joined({to_two_digits(far.value, upwards), " ", far.unit});
}

std::string write_rain(RainIntensity rain) {
  return trimmed(in_millimetres_per_hour(rain), 1) + " mm/h";
}

std::string write_seconds(Duration time) {
  const double seconds = in_seconds(time);
  return fixed(seconds, seconds < 10.0 ? 1 : 0) + " s";
}

std::string write_share(double share) { return fixed(100.0 * share, 0) + " %"; }

std::string write_minutes(Duration time) { return fixed(in_seconds(time) / 60.0, 0) + " min"; }

Shown shown(Speed v, UnitSystem units) {
  if (uses_miles(units)) return {in_miles_per_hour(v), "mph"};
  return {in_kilometres_per_hour(v), "km/h"};
}

Shown shown(GaugePressure p, UnitSystem units) {
  if (units != UnitSystem::metric) return {in_psi(p), "psi"};
  return {in_bars(p), "bar"};
}

Shown shown(Temperature t, UnitSystem units) {
  if (units == UnitSystem::us) return {in_celsius(t) * 1.8 + 32.0, "°F"};
  return {in_celsius(t), "°C"};
}

Shown shown(Mass m, UnitSystem units) {
  if (units == UnitSystem::us) return {in_pounds(m), "lb"};
  return {in_kilograms(m), "kg"};
}

Shown shown_depth(Length l, UnitSystem units) {
  if (units == UnitSystem::us) return {in_thirty_seconds(l), "1/32 in"};
  return {in_millimetres(l), "mm"};
}

Shown shown_water(Length l, UnitSystem units) {
  if (units == UnitSystem::us) return {in_inches(l), "in"};
  return {in_millimetres(l), "mm"};
}

Shown shown_distance(Length l, UnitSystem units) {
  if (units == UnitSystem::us) return {in_feet(l), "ft"};
  return {in_metres(l), "m"};
}

double in_road_units(Length l, UnitSystem units) {
  return uses_miles(units) ? in_metres(l) / exact::metres_per_mile : in_metres(l) / 1000.0;
}

Speed speed_shown_as(double value, UnitSystem units) {
  return uses_miles(units) ? miles_per_hour(value) : kilometres_per_hour(value);
}

Length distance_shown_as(double value, UnitSystem units) {
  return units == UnitSystem::us ? feet(value) : metres(value);
}

Length road_unit(UnitSystem units) { return uses_miles(units) ? miles(1.0) : kilometres(1.0); }

Speed round_speed(UnitSystem units) {
  return uses_miles(units) ? miles_per_hour(60.0) : kilometres_per_hour(100.0);
}

Speed floor_to_five(Speed v, UnitSystem units) {
  const bool miles = uses_miles(units);
  const double shown = miles ? in_miles_per_hour(v) : in_kilometres_per_hour(v);
  // The nudge keeps 30 mph at 30 after its trip through km/h.
  const double floored = 5.0 * std::floor(shown / 5.0 + 1e-9);
  return miles ? miles_per_hour(floored) : kilometres_per_hour(floored);
}

}  // namespace treadwater
