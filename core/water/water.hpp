// How deep the water is, as a person can tell it: read off a ruler, or said in a word.
//
// A ruler's reading is one depth with an error either way (standard/instrument.hpp), and all ends
// of an answer are drawn from it. A word (standard/wetness.hpp), or a depth worked out of rain, is
// a range without an error of reading: the low end of an answer belongs to its deep edge, the
// central value to its middle, the high end to its shallow edge, and a chance counts every depth
// alike.
//
// Depths are above the tops of the road's texture. Range: any; what is not a number counts as the
// deepest water (estimate.hpp), and nothing or less as none.
#pragma once

#include <limits>

#include "core/quantity/quantity.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/wetness.hpp"

namespace treadwater::water {

class Water {
 public:
  // Every depth within the half-width of the middle, each as likely.
  struct Depths {
    Length middle;
    Length half_width;
  };

  constexpr Water() = default;  // none
  // A plain depth is a ruler's: asked without a word, it can be out.
  constexpr Water(Length read)
      : shallow_(read), middle_(read), deep_(read), error_(standard::ruler_error_at(read)) {}

  static constexpr Water by_ruler(Length read) { return {read}; }
  static constexpr Water between(Length shallow, Length middle, Length deep) {
    Water water;
    water.shallow_ = shallow;
    water.middle_ = middle;
    water.deep_ = deep;
    return water;
  }
  static constexpr Water by_word(standard::Wetness wetness) {
    const standard::WetnessWord& word = standard::wetness_word(wetness);
    if (!word.film) return {};
    return between(word.shallow, (word.shallow + word.deep) / 2.0, word.deep);
  }

  constexpr bool none() const { return deep_ <= Length(); }
  constexpr Length shallow() const { return shallow_; }
  constexpr Length middle() const { return middle_; }
  constexpr Length deep() const { return deep_; }
  constexpr Length reading_error() const { return error_; }

  constexpr Depths at_low_end() const { return {deep_, error_}; }
  constexpr Depths at_high_end() const { return {shallow_, error_}; }
  constexpr Depths all() const {
    return {(shallow_ + deep_) / 2.0, (deep_ - shallow_) / 2.0 + error_};
  }
  constexpr bool one_depth() const { return shallow_ == deep_; }
  constexpr bool operator==(const Water&) const = default;

 private:
  Length shallow_;
  Length middle_;
  Length deep_;
  Length error_;
};

// Where ruts and puddles begin: what is told of them beside a road that is only wet. From here down
// the estimate rests on measured rows; thinner, on stops alone.
inline constexpr Length puddle = millimetres(3.0);

// An onset that is none: no floating at any speed of the road. Above every number.
inline constexpr Speed no_floating = kilometres_per_hour(std::numeric_limits<double>::infinity());

}  // namespace treadwater::water
