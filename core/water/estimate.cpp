// Every power depends on one reading, so it is calculated once for each of that reading's 256
// steps; a draw is then four values looked up and multiplied.
#include "core/water/estimate.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <limits>

#include "core/quantity/splitmix.hpp"
#include "core/standard/instrument.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "core/water/power.hpp"

namespace treadwater::water {
namespace {

using standard::pressure_gauge_error;
using standard::ruler_error;
using standard::tread_gauge_error;

constexpr Source source{"onset-estimate", "Treadwater's own estimate (docs/method.md, Water)",
                        "fitted under the measured rows; no outside source", "2026",
                        Standing::common_practice};

constexpr Length new_tread = millimetres(8.0);
constexpr Length worn_tread = millimetres(1.6);
constexpr Length flood_depth = millimetres(8.0);
constexpr Length deepest_measured = millimetres(10.0);
constexpr Length longest = metres(1.0);
constexpr Length narrowest = millimetres(25.0);
constexpr Length usual_width = millimetres(205.0);
constexpr Length cautious_texture = millimetres(0.7);
constexpr GaugePressure softest = kilopascals(10.0);
constexpr GaugePressure usual_pressure = kilopascals(220.0);
constexpr GaugePressure hardest_measured = kilopascals(250.0);
constexpr double tyre_spread = 0.11;  // measured row H1: 74 to 92 km/h in one test
constexpr std::uint64_t start_of_stream = 20260101;

// ---- readings, rounded so that two different ones differ by far more than a power's error ----

inline double rounded(double value, double steps_per_unit) {
  return std::floor(value * steps_per_unit + 0.5) / steps_per_unit;
}
Length rounded(Length l) { return metres(rounded(in_metres(l), 1073741824.0)); }  // 2^30 to a metre
GaugePressure rounded(GaugePressure p) { return kilopascals(rounded(in_kilopascals(p), 1024.0)); }

// NaN counts as the worst.
Length held_tread(Length t) { return t > metres(0.0) ? std::min(t, longest) : metres(0.0); }
Length held_film(Length w) { return w < longest ? std::max(w, thinnest_film()) : longest; }
Length held_width(Length w) { return w >= narrowest ? w : longest; }
GaugePressure held_pressure(GaugePressure p) { return p > softest ? p : softest; }

// ---- the parts of V, each of one reading ----

double root(double share) { return std::sqrt(std::min(1.0, share)); }

double flooding(Length film) { return power(film / flood_depth, 2.0 / 3.0); }

double width_factor(Length section_width) {
  return std::sqrt(usual_width / held_width(section_width));
}

double pressure_factor(GaugePressure p) { return power(p / usual_pressure, 0.3); }

Speed new_tyre_film_law(Length texture, Length film) {
  return film_onset({usual_pressure, new_tread, film, texture});
}

// How a tread falls away below 1.6 mm.
struct Wear {
  double bare;     // clearing with no tread
  double shrinks;  // flood depth as this power of (tread / 1.6 mm); 0 for no shrinking
};

// The line from 3 to 1.6 mm extended to zero.
constexpr double bare_by_line =
    clearing_at_1_6_mm - 1.6 * (0.80 - clearing_at_1_6_mm) / (3.0 - 1.6);
constexpr Wear by_line{bare_by_line, 2.0};
constexpr Wear half_way{(bare_by_line + clearing_at_1_6_mm) / 2.0, 1.0};
constexpr Wear no_further{clearing_at_1_6_mm, 0.0};

struct TreadPart {
  double loss;   // 1 - c
  double flood;  // (8 mm / flood depth)^(2/3)
};

inline TreadPart tread_part(const Wear& wear, Length grooves) {
  const double left = std::min(1.0, grooves / worn_tread);
  double flood = 1.0;
  if (wear.shrinks > 0.0 && left < 1.0)
    flood = std::min(1e9, left > 0.0 ? power(left, -2.0 / 3.0 * wear.shrinks) : 1e9);
  return {1.0 - clearing(grooves, wear.bare), flood};
}

[[gnu::always_inline]] inline double worn(const TreadPart& tread, double flooded) {
  return 1.0 - tread.loss * std::min(1.0, tread.flood * flooded);
}

Length grooves_of(const WetTyre& tyre, Length tread) {
  return held_tread(tread * tyre.groove_credit);
}

// ---- the distribution ----

constexpr int steps = 256;

// The middles of 256 equal parts of -1 to 1.
double error_at(int step) { return (2.0 * step + 1.0 - steps) / steps; }

template <class Q>
Q reading_at(Q read, Q half_width, int step) {
  return rounded(read) + rounded(half_width * error_at(step));
}

constexpr double low_share = 0.05;
constexpr double high_share = 0.95;

// The draw with the lowest pressure, the deepest film, the lowest tread and the poorest tyre: no
// draw of its case is lower.
constexpr std::uint32_t worst_of_all = 0x0000FF00;

constexpr std::size_t rank_of(double share) {
  return static_cast<std::size_t>(share * (OnsetDraws::count - 1));
}

// V of a new tyre = by_pressure x by_film.
struct Law {
  double by_pressure[steps];
  double by_film[steps];
};

// The water's part on one road, the same for every tyre.
struct WaterPart {
  double designers[steps];  // the cautious law, km/h, and what it loses beyond measured depths
  double beyond[steps];
  double new_tyre[steps];  // the film law, km/h
  double flooded[steps];

  WaterPart(Length depth, Length texture) {
    const double designers_tyre = film_tyre_factor(psi(24.0), thirty_seconds(3.0));
    const double usual_tyre = film_tyre_factor(usual_pressure, new_tread);
    const auto kmh = [](double mph) { return in_kilometres_per_hour(miles_per_hour(mph)); };
    for (int i = 0; i < steps; ++i) {
      const Length film = held_film(reading_at(depth, ruler_error, i));
      const double road = film_water_factor(film, texture);
      const double cautious_road =
          texture > cautious_texture ? film_water_factor(film, cautious_texture) : road;
      designers[i] = kmh(designers_tyre * cautious_road);
      beyond[i] = root(deepest_measured / film);
      new_tyre[i] = kmh(usual_tyre * road);
      flooded[i] = flooding(film);
    }
  }
};

class Cases {
 public:
  explicit Cases(const WaterPart& water) : water_(water) {}

  void set(const WetTyre& tyre) {
    const auto width = [&](double unknown) {
      return width_factor(tyre.section_width.value_or(millimetres(unknown)));
    };
    const double wide = std::min(1.0, width(255.0));
    const double usual = width(205.0);
    const double narrow = std::max(1.0, width(155.0));
    if (!(tyre.pressure == set_for_)) set_pressure(tyre.pressure);
    for (int i = 0; i < steps; ++i) {
      cautious_.by_film[i] = water_.designers[i] * wide * water_.beyond[i];
      film_.by_film[i] = water_.new_tyre[i] * usual;
      pressure_.by_film[i] = narrow;
      const Length grooves = grooves_of(tyre, reading_at(tyre.tread, tread_gauge_error, i));
      by_line_[i] = tread_part(by_line, grooves);
      half_way_[i] = tread_part(half_way, grooves);
      no_further_[i] = tread_part(no_further, grooves);
      spread_[i] = 1.0 + tyre_spread * error_at(i);
    }
  }

  std::vector<double> draw() const {
    std::vector<double> kmh(OnsetDraws::count);
    double* next = kmh.data();
    SplitMix64 stream(start_of_stream);
    for (const Law* law : {&cautious_, &film_, &pressure_})
      for (const TreadPart* wear : {by_line_, by_line_, half_way_, no_further_})
        for (int i = 0; i < OnsetDraws::draws_of_a_case; ++i)
          *next++ = speed(*law, wear, static_cast<std::uint32_t>(stream.next()));
    return kmh;
  }

  // The draw of the low end, without sorting them all: a few draws of the lowest model give a bound
  // that it is likely below; draws above it are left out, and so are whole cases that cannot be
  // that low. `randoms` are the stream's numbers.
  double low_draw(const std::vector<std::uint32_t>& randoms) const {
    const double low = low_draw_under(likely_bound(randoms), randoms);
    constexpr double none = std::numeric_limits<double>::infinity();
    return low < none ? low : low_draw_under(none, randoms);
  }

 private:
  static constexpr std::size_t rank = rank_of(low_share);

  void set_pressure(GaugePressure read) {
    set_for_ = read;
    for (int i = 0; i < steps; ++i) {
      const GaugePressure p = held_pressure(reading_at(read, pressure_gauge_error, i));
      cautious_.by_pressure[i] = root(p / usual_pressure);
      film_.by_pressure[i] = pressure_factor(p);
      pressure_.by_pressure[i] =
          in_kilometres_per_hour(pressure_only_onset(std::min(p, hardest_measured)));
    }
  }

  double likely_bound(const std::vector<std::uint32_t>& randoms) const {
    std::array<double, 256> sample;
    for (std::size_t i = 0; i < sample.size(); ++i) {
      const TreadPart* wears[] = {by_line_, by_line_, half_way_, no_further_};
      sample[i] = speed(cautious_, wears[i % 4], randoms[i]);
    }
    // The low end is at most 15 % of the way up the cautious law's draws.
    const auto bound = sample.begin() + 56;
    std::nth_element(sample.begin(), bound, sample.end());
    return *bound;
  }

  // The draw of that rank, if it is below the bound; infinity if it is not.
  double low_draw_under(double bound, const std::vector<std::uint32_t>& randoms) const {
    std::array<double, 4 * rank> kept;
    std::size_t count = 0;
    const auto cut = [&] {
      std::nth_element(kept.begin(), kept.begin() + rank, kept.begin() + count);
      bound = kept[rank];
      count = rank + 1;
    };
    const std::uint32_t* random = randoms.data();
    for (const Law* law : {&cautious_, &film_, &pressure_})
      for (const TreadPart* wear : {by_line_, by_line_, half_way_, no_further_}) {
        const std::uint32_t* end = random + OnsetDraws::draws_of_a_case;
        if (speed(*law, wear, worst_of_all) >= bound) random = end;
        while (random != end) {
          const double kmh = speed(*law, wear, *random++);
          kept[count] = kmh;
          count += kmh < bound;
          if (count == kept.size()) cut();
        }
      }
    if (count <= rank) return std::numeric_limits<double>::infinity();
    cut();
    return bound;
  }

  // One random number is one draw: a byte for each reading and one for the spread between tyres.
  [[gnu::always_inline]] double speed(const Law& law, const TreadPart* wear,
                                      std::uint32_t random) const {
    const auto pressure = static_cast<std::uint8_t>(random);
    const auto film = static_cast<std::uint8_t>(random >> 8);
    const auto tread = static_cast<std::uint8_t>(random >> 16);
    const auto spread = static_cast<std::uint8_t>(random >> 24);
    return law.by_pressure[pressure] * law.by_film[film] * worn(wear[tread], water_.flooded[film]) *
           spread_[spread];
  }

  const WaterPart& water_;
  GaugePressure set_for_ = kilopascals(-1.0);  // none yet
  Law cautious_;
  Law film_;
  Law pressure_;
  TreadPart by_line_[steps];
  TreadPart half_way_[steps];
  TreadPart no_further_[steps];
  double spread_[steps];
};

// Values in buckets of equal width, so that finding one by rank sorts only a few of them: several
// times as fast in WebAssembly as std::sort.
class Dealt {
 public:
  explicit Dealt(const std::vector<double>& values) : values_(values), begin_(buckets + 1) {
    least_ = values.front();
    double most = least_;
    for (const double value : values) {
      least_ = std::min(least_, value);
      most = std::max(most, value);
    }
    per_width_ = (buckets - 1) / std::max(1e-9, most - least_);
    for (const double value : values) ++begin_[bucket_of(value) + 1];
    for (std::size_t i = 1; i < begin_.size(); ++i) begin_[i] += begin_[i - 1];
  }

  // The values that this many are below, for two ranks.
  std::array<double, 2> at_ranks(std::size_t low, std::size_t high) const {
    const std::size_t low_bucket = bucket_at(low);
    const std::size_t high_bucket = bucket_at(high);
    std::vector<double> lows, highs;
    for (const double value : values_) {
      const std::size_t bucket = bucket_of(value);
      if (bucket == low_bucket) lows.push_back(value);
      if (bucket == high_bucket) highs.push_back(value);
    }
    sort_few(lows);
    sort_few(highs);
    return {lows[low - begin_[low_bucket]], highs[high - begin_[high_bucket]]};
  }

  std::vector<double> sorted() && {
    std::vector<double> result(values_.size());
    for (const double value : values_) result[begin_[bucket_of(value)]++] = value;
    sort_few(result);
    return result;
  }

 private:
  static constexpr int buckets = 4096;

  std::size_t bucket_of(double value) const {
    return static_cast<std::size_t>((value - least_) * per_width_);
  }

  std::size_t bucket_at(std::size_t rank) const {
    const auto after = std::upper_bound(begin_.begin(), begin_.end(), rank);
    return static_cast<std::size_t>(after - begin_.begin()) - 1;
  }

  // By insertion, which is quick if nothing is far from its place.
  static void sort_few(std::vector<double>& values) {
    for (std::size_t i = 1; i < values.size(); ++i) {
      const double value = values[i];
      std::size_t at = i;
      for (; at > 0 && values[at - 1] > value; --at) values[at] = values[at - 1];
      values[at] = value;
    }
  }

  const std::vector<double>& values_;
  double least_;
  double per_width_;
  std::vector<std::size_t> begin_;  // how many values are before each bucket
};

std::vector<double> drawn(const WetTyre& tyre) {
  const WaterPart water(tyre.film, tyre.texture);
  Cases cases(water);
  cases.set(tyre);
  return cases.draw();
}

}  // namespace

OnsetDraws::OnsetDraws(const WetTyre& tyre) : sorted_kmh_(Dealt(drawn(tyre)).sorted()) {}

Speed OnsetDraws::at_share(double share) const {
  return kilometres_per_hour(sorted_kmh_[rank_of(std::clamp(share, 0.0, 1.0))]);
}

double OnsetDraws::chance_of_floating(Speed speed) const {
  const auto above = std::upper_bound(sorted_kmh_.begin(), sorted_kmh_.end(), speed.stored());
  return static_cast<double>(above - sorted_kmh_.begin()) / count;
}

std::optional<SpeedBand> aquaplaning_onset(const WetTyre& tyre) {
  if (tyre.film <= metres(0.0)) return std::nullopt;
  const std::vector<double> draws = drawn(tyre);
  const auto [low, high] = Dealt(draws).at_ranks(rank_of(low_share), rank_of(high_share));
  return SpeedBand{kilometres_per_hour(low), onset_map(tyre, {tyre.tread}, {tyre.film}).front(),
                   kilometres_per_hour(high)};
}

struct OnsetsInWater::Parts {
  WaterPart water;
  Cases cases{water};
  std::vector<std::uint32_t> randoms{};
};

OnsetsInWater::OnsetsInWater(Length film, Length texture)
    : film_(film), texture_(texture), parts_(new Parts{WaterPart(film, texture)}) {
  SplitMix64 stream(start_of_stream);
  parts_->randoms.resize(OnsetDraws::count);
  for (std::uint32_t& random : parts_->randoms) random = static_cast<std::uint32_t>(stream.next());
}

OnsetsInWater::~OnsetsInWater() = default;

OnsetsInWater::Onset OnsetsInWater::of(WetTyre tyre) const {
  tyre.film = film_;
  tyre.texture = texture_;
  parts_->cases.set(tyre);
  return {kilometres_per_hour(parts_->cases.low_draw(parts_->randoms)),
          onset_map(tyre, {tyre.tread}, {tyre.film}).front()};
}

std::vector<Speed> onset_map(const WetTyre& tyre, const std::vector<Length>& treads,
                             const std::vector<Length>& films) {
  struct FilmPart {
    Speed onset;
    double flooded;
  };
  const double of_tyre = pressure_factor(held_pressure(rounded(tyre.pressure))) *
                         width_factor(tyre.section_width.value_or(usual_width));
  std::vector<FilmPart> columns;
  columns.reserve(films.size());
  for (const Length film : films) {
    const Length held = held_film(rounded(film));
    columns.push_back({new_tyre_film_law(tyre.texture, held) * of_tyre, flooding(held)});
  }
  std::vector<Speed> map;
  map.reserve(treads.size() * films.size());
  for (const Length tread : treads) {
    const TreadPart row = tread_part(half_way, grooves_of(tyre, rounded(tread)));
    for (const FilmPart& column : columns) map.push_back(column.onset * worn(row, column.flooded));
  }
  return map;
}

const Source& estimate_source() { return source; }

}  // namespace treadwater::water
