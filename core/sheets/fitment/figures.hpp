// The figures, the table and the drawing of the sheet `fitment`.
#pragma once

#include "core/judge/size_change.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::fitment {

// What the form asks about the wheels besides their tyres.
struct Wheels {
  std::optional<Mass> mass{};  // with its tyre
  std::optional<Mass> new_mass{};
  std::optional<Mass> unsprung{};
  std::optional<Stiffness> suspension{};

  // With hub, brake and half the suspension a corner weighs more than its wheel.
  bool too_light() const;
};

void tell_sizes(const judge::SizeChangeJudged::Sizes& sizes, Speed on_dial, AnswerBuilder& answer);
void tell_ratings(const judge::SizeChangeJudged& judged, const judge::SizeChangeCase& change,
                  AnswerBuilder& answer);
// One contact patch over the other, beside a bank card.
void draw_patches(const judge::SizeChangeCase& change, AnswerBuilder& answer);
// Was everything given that the wheel-hop frequency needs?
bool asks_for_hop(const Wheels& wheels, const judge::SizeChangeCase& change);
// What the mass of the wheels does.
void weigh(const Wheels& wheels, const judge::SizeChangeCase& change, AnswerBuilder& answer);

}  // namespace treadwater::sheets::fitment
