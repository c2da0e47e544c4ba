#include "core/judge/finding.hpp"

#include <algorithm>

namespace treadwater::judge {
namespace {

constexpr std::string_view limit_ids[] = {
#define TREADWATER_LIMIT(name, id, label, why) id,
#include "core/judge/limits.inc"
#undef TREADWATER_LIMIT
};

}  // namespace

std::string_view id_of(Finding finding) { return finding.row().id; }
Level level_of(Finding finding) { return finding.row().level; }
Cure cure_of(Finding finding) { return finding.row().cure; }
bool air_cures(Finding finding) {
  const Cure cure = cure_of(finding);
  // Too little for a speed only: driving slower is the other cure.
  return cure == Cure::air || cure == Cure::pump || finding == finding::pressure_low_for_speed;
}
bool has_reason(Finding finding) { return !finding.row().reason.empty(); }

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

[[gnu::noinline]] Value::Value(As as, double number, int decimals)
    : as_(as), decimals_(static_cast<std::int8_t>(decimals)), number_(number) {}
[[gnu::noinline]] Value::Value(const Value&) = default;
[[gnu::noinline]] Value::Value(Value&&) noexcept = default;
[[gnu::noinline]] Value& Value::operator=(const Value&) = default;
[[gnu::noinline]] Value& Value::operator=(Value&&) noexcept = default;
[[gnu::noinline]] Value::~Value() = default;
Value::Value(Phrase name) : as_(As::text), text_(say(name)) {}
Value::Value(const Text& text) : as_(As::text), text_(text.str()) {}
Value::Value(std::string text) : as_(As::text), text_(std::move(text)) {}
Value::Value(const Typed& name) : as_(As::text), text_(name.text()) {}

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

[[gnu::noinline]] Found::Found(const Found&) = default;
[[gnu::noinline]] Found::Found(Found&&) noexcept = default;
[[gnu::noinline]] Found& Found::operator=(const Found&) = default;
[[gnu::noinline]] Found& Found::operator=(Found&&) noexcept = default;
[[gnu::noinline]] Found::~Found() = default;
[[gnu::noinline]] Found::Found(Finding which, SomeValues gaps, SomeSources from)
    : what(which), values(gaps.kept()), sources(from.kept()) {}

[[gnu::noinline]] Limit::Limit() = default;
[[gnu::noinline]] Limit::Limit(const Limit&) = default;
[[gnu::noinline]] Limit::Limit(Limit&&) noexcept = default;
[[gnu::noinline]] Limit& Limit::operator=(const Limit&) = default;
[[gnu::noinline]] Limit& Limit::operator=(Limit&&) noexcept = default;
[[gnu::noinline]] Limit::~Limit() = default;

Limit fixed_limit(LimitName what, Speed speed, SomeValues label, SomeValues why,
                  SomeSources sources) {
  Limit limit;
  limit.what = what;
  limit.central = limit.low = limit.high = speed;
  limit.label = label.kept();
  limit.why = why.kept();
  limit.sources = sources.kept();
  return limit;
}

void Findings::add(Found one) {
  found.push_back(std::move(one));
  for (std::size_t i = found.size(); --i > 0 && found[i - 1].level() < found[i].level();)
    std::swap(found[i - 1], found[i]);
}

void Findings::add(Finding what, SomeValues values, SomeSources sources) {
  add(Found(what, values, sources));
}

void Findings::add(Limit limit) {
  limits.push_back(std::move(limit));
  const auto before = [](const Limit& one, const Limit& other) {
    return one.beside == other.beside ? one.kept() < other.kept() : other.beside;
  };
  for (std::size_t i = limits.size(); --i > 0 && before(limits[i], limits[i - 1]);)
    std::swap(limits[i - 1], limits[i]);
}

const Limit* Findings::beside() const {
  return limits.empty() || !limits.back().beside ? nullptr : &limits.back();
}

const Limit* Findings::lowest() const {
  return limits.empty() || limits.front().beside ? nullptr : &limits.front();
}

bool Findings::has(Finding what) const {
  return std::any_of(found.begin(), found.end(),
                     [&](const Found& one) { return one.what == what; });
}

bool stop_where_no_speed_helps(Findings& findings) {
  const auto driven_with = [](Cure cure) { return cure == Cure::slower || cure == Cure::pump; };
  const auto stopped = [&] {
    const Limit* lowest = findings.lowest();
    return lowest != nullptr && !(lowest->low > Speed());
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
