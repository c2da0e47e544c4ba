#include "core/grip/film.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace treadwater::grip {
namespace {

constexpr double speeds[] = {50.0, 90.0, 130.0};  // km/h
constexpr double films[] = {0.0, 0.2, 1.0, 2.0};  // mm
constexpr double friction[2][3][4] = {
    {{0.85, 0.65, 0.55, 0.5}, {0.8, 0.6, 0.3, 0.05}, {0.75, 0.55, 0.2, 0.0}},  // new
    {{1.0, 0.5, 0.4, 0.25}, {0.95, 0.2, 0.1, 0.05}, {0.9, 0.2, 0.1, 0.0}},     // worn to 1.6 mm
};
constexpr int is_new = 0;
constexpr int is_worn = 1;

constexpr double viscous_film = 0.2;  // mm: the depth at which the thin-film loss is complete
constexpr double worn_mm = 1.6;
constexpr double middle_mm = 3.0;
constexpr double new_mm = 8.0;
constexpr double bare_share_low = 0.4;
constexpr double fastest_kmh = 300.0;

double line(double x, double x0, double x1, double y0, double y1) {
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
}

double by_film(const double (&row)[4], double film) {
  int i = 0;
  while (i < 2 && film > films[i + 1]) ++i;
  return line(film, films[i], films[i + 1], row[i], row[i + 1]);
}

double printed(int tyre, double kmh, double film) {
  const auto& table = friction[tyre];
  if (kmh < speeds[0])
    return line(kmh, 0.0, speeds[0], by_film(table[0], std::min(film, viscous_film)),
                std::max(0.0, by_film(table[0], film)));
  const int i = kmh < speeds[1] ? 0 : 1;
  return std::max(0.0, line(kmh, speeds[i], speeds[i + 1], by_film(table[i], film),
                            by_film(table[i + 1], film)));
}

// 0 at 1.6 mm of tread, 1 at 8, `middle` at 3, in straight lines.
double tread_gain(double mm, double middle) {
  if (mm < middle_mm) return line(mm, worn_mm, middle_mm, 0.0, middle);
  return std::min(1.0, line(mm, middle_mm, new_mm, middle, 1.0));
}

double low_share(double kmh, double mm, double film) {
  const double f = film < viscous_film ? std::min(viscous_film, 2.0 * film) : film;
  const double new_wet = printed(is_new, kmh, f);
  const double worn_wet = printed(is_worn, kmh, f);
  const double treaded = mm < worn_mm ? worn_wet * line(mm, 0.0, worn_mm, bare_share_low, 1.0)
                                      : worn_wet + (new_wet - worn_wet) * tread_gain(mm, 0.15);
  // Worn rubber grips better in the dry and on the thinnest film: no credit for it.
  return std::min(new_wet, treaded) / printed(is_new, kmh, 0.0);
}

double high_share(double kmh, double mm, double film) {
  const double gain = mm < worn_mm ? (mm - worn_mm) / (new_mm - worn_mm) : tread_gain(mm, 0.6);
  const double viscous = line(gain, 0.0, 1.0, 0.2, 0.02) * std::min(1.0, film / viscous_film);
  const double drained = std::max(2.0, line(gain, 0.0, 1.0, 4.0, 16.0));
  const double v = kmh / 100.0;
  return (1.0 - viscous) * std::max(0.0, 1.0 - film * v * v / drained);
}

}  // namespace

double half_way(double low, double high) { return std::sqrt(low * high); }

double handbook_friction(Speed speed, Length tread, Length film) {
  const double kmh = in_kilometres_per_hour(speed);
  const double mm = std::clamp(in_millimetres(tread), worn_mm, new_mm);
  const double f = in_millimetres(film);
  return line(mm, worn_mm, new_mm, printed(is_worn, kmh, f), printed(is_new, kmh, f));
}

FrictionBand share_kept(Speed speed, Length tread, Length film) {
  const double given = in_kilometres_per_hour(speed);
  const double mm = in_millimetres(tread);
  const double f = in_millimetres(film);
  if (!(given >= 0.0) || !(mm >= 0.0) || !(f >= 0.0)) return {};
  const double kmh = std::min(given, fastest_kmh);
  const double high = high_share(kmh, mm, f);
  const double low = std::min(low_share(kmh, mm, f), high);
  return {low, half_way(low, high), high};
}

}  // namespace treadwater::grip
