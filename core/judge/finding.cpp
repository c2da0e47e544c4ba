#include "core/judge/finding.hpp"

#include <algorithm>

namespace treadwater::judge {
namespace {

struct Row {
  std::string_view id;
  Level level;
  Cure cure;
  bool reasoned;
};

constexpr Row rows[] = {
#define TREADWATER_FINDING(name, id, level, cure, reason, sentence) \
  {id, Level::level, Cure::cure, !(reason).empty()},
#include "core/judge/findings.inc"
#undef TREADWATER_FINDING
};

constexpr std::string_view limit_ids[] = {
#define TREADWATER_LIMIT(name, id, label, why) id,
#include "core/judge/limits.inc"
#undef TREADWATER_LIMIT
};

const Row& row_of(Finding finding) { return rows[static_cast<std::size_t>(finding)]; }

}  // namespace

std::string_view id_of(Finding finding) { return row_of(finding).id; }
Level level_of(Finding finding) { return row_of(finding).level; }
Cure cure_of(Finding finding) { return row_of(finding).cure; }
bool air_cures(Finding finding) {
  const Cure cure = cure_of(finding);
  // Too little for a speed only: driving slower is the other way.
  return cure == Cure::air || cure == Cure::pump || finding == Finding::pressure_low_for_speed;
}
bool has_reason(Finding finding) { return row_of(finding).reasoned; }

bool same_danger(Finding one, Finding other) {
  return one == other || (level_of(one) == level_of(other) && id_of(one) == id_of(other));
}

std::string_view id_of(LimitName name) { return limit_ids[static_cast<std::size_t>(name)]; }

std::string_view id_of(const Limit& limit) {
  return limit.found ? id_of(limit.found->what) : id_of(limit.what);
}

bool alike(const Limit& one, const Limit& other) { return id_of(one) == id_of(other); }

void add_once(Sources& sources, const Source& source) {
  if (std::none_of(sources.begin(), sources.end(),
                   [&](const Source* s) { return s->id == source.id; }))
    sources.push_back(&source);
}

void add_once(Sources& sources, const Sources& more) {
  for (const Source* source : more) add_once(sources, *source);
}

Value Value::kind(const Text& name) {
  Value value(name);
  value.as_ = As::kind;
  return value;
}

Value Value::quoted(std::string_view typed) {
  Value value{As::quoted, 0.0};
  value.text_ = typed;
  return value;
}

Value Value::either(const std::vector<std::string>& names) {
  std::string list;
  for (const std::string& name : names) list = list.empty() ? name : say("#, or #", {list, name});
  return {list};
}

Limit fixed_limit(LimitName what, Speed speed, Values label, Values why, Sources sources) {
  Limit limit;
  limit.what = what;
  limit.central = limit.low = limit.high = speed;
  limit.label = std::move(label);
  limit.why = std::move(why);
  limit.sources = std::move(sources);
  return limit;
}

void Findings::add(Found one) {
  auto place = found.begin();
  while (place != found.end() && place->level() >= one.level()) ++place;
  found.insert(place, std::move(one));
}

void Findings::add(Finding what, Values values, Sources sources) {
  add(Found{what, std::move(values), std::move(sources)});
}

void Findings::add(Limit limit) {
  auto place = limits.begin();
  while (place != limits.end() && place->kept() <= limit.kept()) ++place;
  limits.insert(place, std::move(limit));
}

bool Findings::has(Finding what) const {
  return std::any_of(found.begin(), found.end(),
                     [&](const Found& one) { return one.what == what; });
}

bool stop_where_no_speed_helps(Findings& findings) {
  const auto driven_with = [](Cure cure) { return cure == Cure::slower || cure == Cure::pump; };
  const auto stopped = [&] {
    return !findings.limits.empty() && !(findings.limits.front().low > Speed());
  };
  for (const Found& one : findings.found)
    if (!stopped() && one.level() == Level::unfit && !driven_with(cure_of(one.what))) {
      Limit limit = fixed_limit(LimitName::unfit, Speed(), {}, {}, one.sources);
      limit.found = one;
      findings.add(std::move(limit));
    }
  return stopped();
}

}  // namespace treadwater::judge
