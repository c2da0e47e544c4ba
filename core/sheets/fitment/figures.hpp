// The figures, the table and the drawing of the sheet `fitment`.
#pragma once

#include "core/judge/size_change.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::fitment {

// What the form asks of the wheels beside the tyres on them.
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
// Contact patch over contact patch, beside a payment card.
void draw_patches(const judge::SizeChangeCase& change, AnswerBuilder& answer);
// Was all given that the frequency of wheel hop takes?
bool asks_for_hop(const Wheels& wheels, const judge::SizeChangeCase& change);
// What the mass of the wheels does.
void weigh(const Wheels& wheels, const judge::SizeChangeCase& change, AnswerBuilder& answer);

}  // namespace treadwater::sheets::fitment
