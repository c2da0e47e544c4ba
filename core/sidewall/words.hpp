// Makes a Reading of what was found, in three steps: values, then the parts of the picture and the
// marks, then sentences on what the text leaves out and what was assumed.
//
// Inside this room only.
#pragma once

#include <string>
#include <vector>

#include "core/sidewall/tyre.hpp"

namespace treadwater::sidewall {

// What the three steps use, and the Reading that they fill.
struct Gathered {
  const Text& text;
  const Tyre& tyre;
  const Facts& facts;
  Reading& reading;

  // What the number after the slash means.
  Second second_meaning() const {
    return tyre.size.shape == Shape::inch_slash ? second_of(facts) : Second::series;
  }
};

void put_values(const Gathered& gathered);  // its family must be known
void put_parts(const Gathered& gathered);
void put_sentences(const Gathered& gathered);

constexpr double number(std::int32_t scaled) { return static_cast<double>(scaled) / number_scale; }
bool width_in_inches(Shape shape);
standard::SpeedSymbol symbol_in_size(char letter);
// Truck and van tyres may be marked for a second load at another speed; others have one only.
bool may_have_two_services(Family family);

}  // namespace treadwater::sidewall
