// Every power belongs to one reading, so it is taken once for each of that reading's 256 steps; a
// draw is then four steps looked up and multiplied.
#include "core/water/estimate.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <iterator>

#include "core/quantity/splitmix.hpp"
#include "core/standard/instrument.hpp"
#include "core/water/dealt.hpp"
#include "core/water/law.hpp"

namespace treadwater::water {
namespace {

using namespace law;
using standard::pressure_gauge_error;
using standard::tread_gauge_error;

constexpr Source source{"onset-estimate", "Treadwater's own estimate (docs/method.md, Water)",
                        "fitted between measured onsets and wet stops; no outside source", "2026",
                        Standing::common_practice};

constexpr double tyre_spread = 0.11;  // measured row H1: 74 to 92 km/h in one test
constexpr std::uint64_t start_of_stream = 20260101;

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

// A draw of the same film with the lowest pressure, the least tread and the poorest tyre: none of
// its case with as much water or less is lower.
constexpr std::uint32_t worst_in_its_film(std::uint32_t random) { return random & 0x0000FF00; }

constexpr std::size_t rank_of(double share) {
  return static_cast<std::size_t>(share * (OnsetDraws::count - 1));
}

// The stream's numbers, one a draw.
const std::vector<std::uint32_t>& randoms() {
  static const std::vector<std::uint32_t> all = [] {
    std::vector<std::uint32_t> numbers(OnsetDraws::count);
    SplitMix64 stream(start_of_stream);
    for (std::uint32_t& number : numbers) number = static_cast<std::uint32_t>(stream.next());
    return numbers;
  }();
  return all;
}

// The same, in each case the deepest film first.
const std::vector<std::uint32_t>& deepest_first() {
  static const std::vector<std::uint32_t> all = [] {
    std::vector<std::uint32_t> numbers;
    numbers.reserve(OnsetDraws::count);
    for (auto begin = randoms().begin(); begin != randoms().end();
         begin += OnsetDraws::draws_of_a_case)
      for (std::uint32_t film = steps; film-- > 0;)
        std::copy_if(begin, begin + OnsetDraws::draws_of_a_case, std::back_inserter(numbers),
                     [&](std::uint32_t number) { return (number >> 8 & 0xFF) == film; });
    return numbers;
  }();
  return all;
}

// x of a new tyre = by_pressure x by_film.
struct Law {
  double by_pressure[steps];
  double by_film[steps];
};

// What the water on one road gives, the same for every tyre.
struct WaterPart {
  double designers[steps];  // the cautious law, km/h, and what it loses beyond measured depths
  double beyond[steps];
  double new_tyre[steps];  // the film law, km/h
  double deep[steps];
  double flooded[steps];
  double shallow[steps];  // of the rise
  double cautious[steps];
  bool rises;  // does any draw lie below 3 mm?

  WaterPart(const Water::Depths& depths, Length texture) {
    const double designers_tyre = film_tyre_factor(psi(24.0), thirty_seconds(3.0));
    const double usual_tyre = film_tyre_factor(usual_pressure, new_tread);
    const auto kmh = [](double mph) { return in_kilometres_per_hour(miles_per_hour(mph)); };
    for (int i = 0; i < steps; ++i) {
      // Rounded as a sum: where the half-width grows with the reading, two roundings could undo it.
      const Length reading = held_film(rounded(depths.middle + depths.half_width * error_at(i)));
      const Length film = not_shallow(reading);
      const double road = film_water_factor(film, texture);
      const double cautious_road =
          texture > cautious_texture ? film_water_factor(film, cautious_texture) : road;
      designers[i] = kmh(designers_tyre * cautious_road);
      beyond[i] = deep_cautious(film);
      new_tyre[i] = kmh(usual_tyre * road);
      deep[i] = law::deep(film);
      flooded[i] = flooding(film);
      shallow[i] = shallowness(reading);
      cautious[i] = cautious_water(reading);
    }
    rises = shallow[0] > 0.0;
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
      film_.by_film[i] = water_.new_tyre[i] * usual * water_.deep[i];
      pressure_.by_film[i] = narrow * water_.deep[i];
      const Length grooves = grooves_of(tyre, reading_at(tyre.tread, tread_gauge_error, i));
      by_line_[i] = half_way_[i] = no_further_[i] = 1.0 - clearing(grooves, bare_by_line);
      if (grooves < worn_tread) {
        half_way_[i] = 1.0 - clearing(grooves, bare_half_way);
        no_further_[i] = 1.0 - clearing(grooves, clearing_at_1_6_mm);
      }
      hold_[i] = grooves_hold(grooves);
      cautious_grooves_[i] = cautious_grooves(grooves);
      spread_[i] = 1.0 + tyre_spread * error_at(i);
    }
  }

  std::vector<double> draw() const {
    std::vector<double> kmh(OnsetDraws::count);
    double* next = kmh.data();
    const std::uint32_t* random = randoms().data();
    each_case([&](const auto& speed) {
      for (int i = 0; i < OnsetDraws::draws_of_a_case; ++i) *next++ = speed(*random++);
    });
    return kmh;
  }

  // The draw of the low end, without sorting them all: a few draws of the lowest law give a bound
  // that it is likely under, what lies above is left out, and a case is left where none of its
  // draws with less water can come so low.
  double low_draw() const {
    const double low = low_draw_under(likely_bound());
    return low < none ? low : low_draw_under(none);
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

  double likely_bound() const {
    std::array<double, 256> sample;
    const double* losses[] = {by_line_, by_line_, half_way_, no_further_};
    for (std::size_t i = 0; i < sample.size(); ++i)
      sample[i] = speed<true, true>(cautious_, losses[i % 4], randoms()[i]);
    // The low end is at most 15 % of the way up the cautious law's draws.
    const auto bound = sample.begin() + 56;
    std::nth_element(sample.begin(), bound, sample.end());
    return *bound;
  }

  // The draw of that rank, if it is below the bound; none if it is not.
  double low_draw_under(double bound) const {
    std::array<double, 4 * rank> kept;
    std::size_t count = 0;
    const auto cut = [&] {
      std::nth_element(kept.begin(), kept.begin() + rank, kept.begin() + count);
      bound = kept[rank];
      count = rank + 1;
    };
    constexpr int looked_at_once = 48;
    static_assert(OnsetDraws::draws_of_a_case % looked_at_once == 0);
    const std::uint32_t* random = deepest_first().data();
    each_case([&](const auto& speed) {
      const std::uint32_t* end = random + OnsetDraws::draws_of_a_case;
      while (random != end && speed(worst_in_its_film(*random)) < bound)
        for (int i = 0; i < looked_at_once; ++i) {
          const double kmh = speed(*random++);
          kept[count] = kmh;
          count += kmh < bound;
          if (count == kept.size()) cut();
        }
      random = end;
    });
    if (count <= rank) return none;
    cut();
    return bound;
  }

  // Asks `use` for each of the twelve cases in their order, with the function of its draws. From
  // 3 mm of water up there is no rise to reckon.
  template <class Use>
  void each_case(const Use& use) const {
    if (water_.rises)
      each_case_of<true>(use);
    else
      each_case_of<false>(use);
  }
  template <bool rises, class Use>
  void each_case_of(const Use& use) const {
    for (const double* loss : {by_line_, by_line_, half_way_, no_further_})
      use([&](std::uint32_t random) { return speed<rises, true>(cautious_, loss, random); });
    for (const Law* law : {&film_, &pressure_})
      for (const double* loss : {by_line_, by_line_, half_way_, no_further_})
        use([&](std::uint32_t random) { return speed<rises, false>(*law, loss, random); });
  }

  // One random number is one draw: a byte for each reading and one for the spread between tyres.
  template <bool rises, bool cautious>
  [[gnu::always_inline]] double speed(const Law& law, const double* loss,
                                      std::uint32_t random) const {
    const auto pressure = static_cast<std::uint8_t>(random);
    const auto film = static_cast<std::uint8_t>(random >> 8);
    const auto tread = static_cast<std::uint8_t>(random >> 16);
    const auto spread = static_cast<std::uint8_t>(random >> 24);
    const double x = on_grid(law.by_pressure[pressure] * law.by_film[film] *
                             worn(loss[tread], water_.flooded[film]) * spread_[spread]);
    if constexpr (!rises) return x;
    if constexpr (cautious)
      return risen(x, cautious_rise(cautious_grooves_[tread], water_.cautious[film]),
                   highest_cautious);
    return risen(x, water_.shallow[film] * hold_[tread], highest);
  }

  const WaterPart& water_;
  GaugePressure set_for_ = kilopascals(-1.0);  // none yet
  Law cautious_;
  Law film_;
  Law pressure_;
  double by_line_[steps];  // what a worn tread no longer clears, in three ways
  double half_way_[steps];
  double no_further_[steps];
  double hold_[steps];  // of the rise
  double cautious_grooves_[steps];
  double spread_[steps];
};

std::vector<double> drawn(const WetTyre& tyre, const Water::Depths& depths) {
  const WaterPart water(depths, tyre.texture);
  Cases cases(water);
  cases.set(tyre);
  return cases.draw();
}

}  // namespace

OnsetDraws::OnsetDraws(const WetTyre& tyre)
    : sorted_kmh_(Dealt(drawn(tyre, tyre.film.all())).sorted()) {
  const auto no_number = std::lower_bound(sorted_kmh_.begin(), sorted_kmh_.end(), none);
  std::fill(no_number, sorted_kmh_.end(), in_kilometres_per_hour(no_floating));
}

Speed OnsetDraws::at_share(double share) const {
  return kilometres_per_hour(sorted_kmh_[rank_of(std::clamp(share, 0.0, 1.0))]);
}

double OnsetDraws::chance_of_floating(Speed speed) const {
  const auto above = std::upper_bound(sorted_kmh_.begin(), sorted_kmh_.end(), speed.stored());
  return static_cast<double>(above - sorted_kmh_.begin()) / count;
}

std::optional<SpeedBand> aquaplaning_onset(const WetTyre& tyre) {
  const Water& water = tyre.film;
  if (water.none()) return std::nullopt;
  const std::vector<double> draws = drawn(tyre, water.at_low_end());
  auto [low, high] = Dealt(draws).at_ranks(rank_of(low_share), rank_of(high_share));
  if (!water.one_depth()) {
    const std::vector<double> shallow = drawn(tyre, water.at_high_end());
    high = Dealt(shallow).at_ranks(rank_of(low_share), rank_of(high_share))[1];
  }
  return SpeedBand{onset_of(low), onset_map(tyre, {tyre.tread}, {water.middle()}).front(),
                   onset_of(high)};
}

SpeedBand onset_in_puddles(WetTyre tyre) {
  tyre.film = Water::by_ruler(puddle);
  return *aquaplaning_onset(tyre);
}

Water stricter(WetTyre tyre, const Water& one, const Water& other) {
  if (one.none()) return other;
  if (other.none()) return one;
  const auto low = [&](const Water& water) {
    tyre.film = water;
    return aquaplaning_onset(tyre)->low;
  };
  const Speed of_one = low(one);
  const Speed of_other = low(other);
  if (of_one == of_other) return one.deep() < other.deep() ? other : one;
  return of_other < of_one ? other : one;
}

bool counts_as_slick(const WetTyre& tyre) {
  return !(grooves_of(tyre, tyre.tread) >= least_tread_credited) &&
         !(tyre.film.deep() < least_water_of_slick);
}

struct OnsetsInWater::Parts {
  WaterPart water;
  Cases cases{water};
};

OnsetsInWater::OnsetsInWater(const Water& water, Length texture)
    : water_(water), texture_(texture), parts_(new Parts{WaterPart(water.at_low_end(), texture)}) {}

OnsetsInWater::~OnsetsInWater() = default;

OnsetsInWater::Onset OnsetsInWater::of(WetTyre tyre) const {
  tyre.texture = texture_;
  parts_->cases.set(tyre);
  return {onset_of(parts_->cases.low_draw()),
          onset_map(tyre, {tyre.tread}, {water_.middle()}).front()};
}

std::vector<Speed> onset_map(const WetTyre& tyre, const std::vector<Length>& treads,
                             const std::vector<Length>& films) {
  struct FilmPart {
    double new_tyre;
    double flooded;
    double shallow;
  };
  const double of_tyre = pressure_factor(held_pressure(rounded(tyre.pressure))) *
                         width_factor(tyre.section_width.value_or(usual_width));
  std::vector<FilmPart> columns;
  columns.reserve(films.size());
  for (const Length film : films) {
    const Length reading = held_film(rounded(film));
    const Length held = not_shallow(reading);
    columns.push_back(
        {in_kilometres_per_hour(new_tyre_film_law(tyre.texture, held)) * of_tyre * deep(held),
         flooding(held), shallowness(reading)});
  }
  std::vector<Speed> map(treads.size() * films.size());
  Speed* next = map.data();
  for (const Length tread : treads) {
    const Length grooves = grooves_of(tyre, rounded(tread));
    const double loss = 1.0 - clearing(grooves, bare_by_line);
    const double hold = grooves_hold(grooves);
    for (const FilmPart& column : columns) {
      const double x = on_grid(column.new_tyre * worn(loss, column.flooded));
      *next++ =
          column.shallow > 0.0 ? onset_of(risen(x, column.shallow * hold, highest)) : onset_of(x);
    }
  }
  return map;
}

const Source& estimate_source() { return source; }

}  // namespace treadwater::water
