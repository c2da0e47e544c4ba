#include "core/sheets/answer.hpp"

namespace treadwater::sheets {

const Phrase safety_words(
    "An estimate, not a permission. Road law, event rules, the tyre maker and a qualified fitter "
    "come first. If in doubt, go slower or do not go.");

Sources sources_used(const Answer& answer) {
  Sources used;
  for (const Limit& limit : answer.limits) judge::add_once(used, limit.sources);
  for (const Caution& caution : answer.cautions) judge::add_once(used, caution.sources);
  for (const Figure& figure : answer.figures) judge::add_once(used, figure.sources);
  return used;
}

}  // namespace treadwater::sheets
