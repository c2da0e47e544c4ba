#include "core/answer/field_list.hpp"

#include <algorithm>
#include <array>

#include "core/answer/teller.hpp"
#include "core/answer/tyre_check.hpp"
#include "core/answer/tyre_kind.hpp"
#include "core/quantity/language.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::answer {
namespace {

constexpr std::string_view list = "rows";
// What a row says: its name, and fields of the sheet for one tyre.
enum Column : std::size_t { name, size, load, pressure, tread, tyre_kind, date_code, columns };
constexpr std::array<const char*, columns> ids = {"name",  "size",      "load",     "pressure",
                                                  "tread", "tyre_kind", "date_code"};
// What all rows share, under the same names.
constexpr const char* shared_ids[] = {"units",          "water", "surface", "place",
                                      "pressure_state", "speed", "today"};
// Notes that rest on the water alone, and are said once.
constexpr std::string_view notes_for_all[] = {"water_not_given", "no_dynamic_aquaplaning",
                                              "thin_film"};

enum class Finding { unfit, unread, care, fit };
constexpr const char* words[] = {"not fit", "not read", "care", "fit"};

struct Row {
  std::size_t number = 0;  // from 1, as in the list
  std::array<std::string_view, columns> given{};
  std::string name;
  std::string tyre;
  std::string tread;
  std::string against_the_law;
  std::string markings;
  std::string age;
  std::string faults;
  std::string governed_by;
  Finding finding = Finding::unread;
  bool read = false;
  std::optional<Speed> hold;
  std::vector<std::size_t> said;  // places in the field's own list
};

// What is said of one or more rows.
struct Said {
  Caution first;
  std::size_t rows = 0;
  bool alike = true;  // word for word the same of each
};

struct Lowest {
  std::string id;
  Speed kept;
  std::size_t row;
};

// The first few names, and how many more.
class Names {
 public:
  void add(std::string_view name) {
    if (count_++ < shown) add_item(text_, name);
  }
  std::size_t count() const { return count_; }
  std::string text() const {
    return count_ <= shown ? text_
                           : filled("# and # more", {text_, std::to_string(count_ - shown)});
  }

 private:
  static constexpr std::size_t shown = 6;
  std::string text_;
  std::size_t count_ = 0;
};

class FieldList : Teller {
 public:
  explicit FieldList(const Input& input) : Teller(field_list_sheet(), input) {}

  Answer run() {
    read_shared();
    gather_rows();
    if (!answer_.ok()) return std::move(answer_);
    judge_all();
    add_limits();
    say_unread();
    say_without_a_speed();
    say_of_rows();
    list_rows();
    conclude_for_all();
    return std::move(answer_);
  }

 private:
  // ---- reading the form ----

  void read_shared() {
    const auto water = quantity<Length>("water");
    const auto surface = choice("surface");
    choice("place");
    choice("pressure_state");
    quantity<Speed>("speed");
    if (water && *water > millimetres(0.0) && surface)
      water_.emplace(*water, standard::find_road_surface(*surface)->texture);
    for (const char* id : shared_ids)
      if (given(id)) shared_.set(id, std::string(text(id)));
  }

  // One pass over all that was given: asking for each field by its path would take a pass each.
  void gather_rows() {
    std::vector<Row> all(rows(list));
    for (const auto& given : input_.all()) {
      const std::string_view path = given.first;
      const std::size_t second = path.rfind('.');
      if (second == std::string_view::npos || path.substr(0, list.size()) != list) continue;
      std::size_t row = 0;
      for (std::size_t i = list.size() + 1; i < second && row < all.size(); ++i)
        row = 10 * row + static_cast<std::size_t>(path[i] - '0');
      if (row >= all.size()) continue;
      for (std::size_t column = 0; column < columns; ++column)
        if (path.substr(second + 1) == ids[column]) all[row].given[column] = given.second;
    }
    for (std::size_t i = 0; i < all.size(); ++i) {
      Row& row = all[i];
      bool blank = true;
      for (std::size_t column = 0; column < columns; ++column)
        blank = blank && (column == tyre_kind || plain_spaces(row.given[column]).empty());
      if (blank) continue;
      row.number = i + 1;
      row.name = name_of(row);
      rows_.push_back(std::move(row));
    }
    if (rows_.empty() && answer_.ok())
      problem(list, "missing",
              "The list is empty. A line needs the sidewall text, load, pressure and tread.");
  }

  static std::string name_of(const Row& row) {
    const std::string said = plain_spaces(row.given[name]);
    if (said.empty()) return filled("Line #", {std::to_string(row.number)});
    constexpr std::size_t mark = std::string_view("“").size();
    const std::string quoted = in_quotes(said);
    return quoted.substr(mark, quoted.size() - 2 * mark);
  }

  Input input_of(const Row& row) const {
    Input one = shared_;
    for (std::size_t column = size; column < columns; ++column)
      if (!row.given[column].empty()) one.set(ids[column], std::string(row.given[column]));
    return one;
  }

  // ---- one row ----

  // Those of one pressure after each other: a good part of the work is then done once for them.
  void judge_all() {
    std::vector<std::size_t> order(rows_.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
      const int differ = rows_[a].given[pressure].compare(rows_[b].given[pressure]);
      return differ < 0 || (differ == 0 && a < b);
    });
    std::size_t done = 0;
    for (const std::size_t i : order) {
      judge(i);
      if (done++ % 50 == 0)
        report(input_.progress, static_cast<double>(done) / static_cast<double>(rows_.size()));
    }
  }

  void judge(std::size_t place) {
    Row& row = rows_[place];
    const TyreFinding found = find_tyre(input_of(row), water_ ? &*water_ : nullptr);
    row.read = found.answer.ok();
    for (const Problem& p : found.answer.problems) add_item(row.faults, worded(p.text), " ");
    Level worst = Level::note;
    const auto keep = [&](const Caution& c) {
      worst = std::max(worst, c.level);
      keep_said(row, c);
    };
    for (const Caution& c : found.answer.cautions) keep(c);
    if (found.tyre) describe(row, *found.tyre, keep);
    describe_tread_and_age(row, found);
    for (const Limit& limit : found.answer.limits) keep_lowest(limit, place);
    row.finding = worst == Level::unfit  ? Finding::unfit
                  : !row.read            ? Finding::unread
                  : worst == Level::care ? Finding::care
                                         : Finding::fit;
    if (found.answer.hold_to) {
      row.hold = found.answer.hold_to->speed;
      row.governed_by = found.answer.limits.front().label;
    }
  }

  void keep_said(Row& row, const Caution& c) {
    if (c.level == Level::note && std::find(std::begin(notes_for_all), std::end(notes_for_all),
                                            c.id) == std::end(notes_for_all))
      return;
    std::size_t i = 0;
    while (i < said_.size() && (said_[i].first.level != c.level || said_[i].first.id != c.id)) ++i;
    if (i == said_.size()) said_.push_back({c});
    said_[i].alike = said_[i].alike && said_[i].first.text == c.text;
    ++said_[i].rows;
    row.said.push_back(i);
  }

  void keep_lowest(const Limit& limit, std::size_t row) {
    const Speed kept = limit.low * limit.share_kept;
    for (Lowest& lowest : lowest_)
      if (lowest.id == limit.id) {
        if (kept < lowest.kept) lowest = {limit.id, kept, row};
        return;
      }
    lowest_.push_back({limit.id, kept, row});
  }

  template <class Keep>
  void describe(Row& row, const sidewall::Reading& tyre, Keep keep) {
    row.tyre = tyre.canonical;
    bool not_for_the_road = false;
    for (const sidewall::Mark& mark : tyre.marks) {
      if (mark.id == "m_s") add_item(row.markings, "M+S");
      if (mark.id == "three_peak") add_item(row.markings, worded("snowflake"));
      if (mark.id == "approval") add_item(row.markings, filled("approval #", {mark.value}));
      if (mark.id == "tin") add_item(row.markings, "DOT");
      if (mark.id == "racing") add_item(row.markings, worded("racing"));
      if (mark.id == "competition") add_item(row.markings, worded("for competition only"));
      if (mark.id == "nhs") add_item(row.markings, worded("not for highway use"));
      not_for_the_road = not_for_the_road || mark.id == "competition" || mark.id == "nhs";
    }
    const std::string kind = plain_spaces(row.given[tyre_kind]);
    const TyreKind* found = find_tyre_kind(kind);
    if (not_for_the_road && (found == nullptr || !found->competition))
      keep({"marked_not_for_road",
            Level::care,
            "it is marked as not for the public road",
            "Marked as not for the public road: on a stage the event's rules decide.",
            {}});
  }

  void describe_tread_and_age(Row& row, const TyreFinding& found) {
    if (found.tread) {
      row.tread = write_depth(*found.tread, units_);
      if (found.law != nullptr) {
        const Length least = found.law->least;
        row.against_the_law = filled(*found.tread < least ? "#: under the # of the law"
                                     : *found.tread <= least + standard::tread_gauge_error
                                         ? "#: at the # of the law, by a gauge's error"
                                         : "#: over the # of the law",
                                     {row.tread, write_depth(least, units_)});
        for (const std::size_t i : row.said)
          if (said_[i].first.id == "winter_tread_law")
            row.against_the_law = filled("#; under that for winter", {row.against_the_law});
      }
    }
    if (found.age)
      row.age = filled(found.age->before_2000 ? "made before 2000" : "# years, week # of #",
                       {std::to_string(static_cast<int>(found.age->least_years)),
                        std::to_string(found.age->week), std::to_string(found.age->year)});
  }

  // ---- the field ----

  // Of alike limits the lowest, as the sheet for that one tyre gives it.
  void add_limits() {
    for (const Lowest& lowest : lowest_) {
      const Row& row = rows_[lowest.row];
      for (Limit& limit : tyre_check(input_of(row)).limits)
        if (limit.id == lowest.id) {
          limit.label = filled("#: #", {row.name, limit.label});
          add_limit(answer_, std::move(limit));
        }
    }
  }

  Names names_with(Finding finding) const {
    Names names;
    for (const Row& row : rows_)
      if (row.finding == finding) names.add(row.name);
    return names;
  }

  void say_unread() {
    Names names;
    for (const Row& row : rows_)
      if (!row.read) names.add(row.name);
    unread_ = names.count();
    if (unread_ == 0) return;
    caution("unread", Level::care,
            filled("# of # could not be read", {std::to_string(unread_), total()}),
            filled("Could not be read: #. They were not judged, and no figure here stands for "
                   "them. What is wrong with each is listed below.",
                   {names.text()}));
  }

  void say_without_a_speed() {
    Names names;
    for (const Row& row : rows_)
      if (row.read && !row.hold) names.add(row.name);
    if (names.count() > 0)
      caution("no_speed", Level::care, filled("no speed can be named for #", {names.text()}),
              filled("#: nothing that was given limits the speed, so the field's does not stand "
                     "for them. Add load index, speed symbol or the depth of water.",
                     {names.text()}));
  }

  std::string total() const { return std::to_string(rows_.size()); }

  bool of_all(const Said& said) const { return said.alike && said.rows + unread_ >= rows_.size(); }

  // What is said word for word of all rows is said whole; of some, with their names; what differs
  // from row to row by its reason.
  void say_of_rows() {
    for (std::size_t i = 0; i < said_.size(); ++i) {
      const Said& said = said_[i];
      Caution c = said.first;
      if (!of_all(said) && c.level != Level::note) {
        Names names;
        for (const Row& row : rows_)
          if (std::find(row.said.begin(), row.said.end(), i) != row.said.end()) names.add(row.name);
        c.text = said.alike ? filled("#: #", {names.text(), c.text})
                            : filled("#: #.", {names.text(), c.reason});
        c.reason = filled("# (#)", {c.reason, names.text()});
      }
      add_caution(answer_, std::move(c));
    }
  }

  // ---- the lists ----

  std::string hold_text(const Row& row) const {
    return !row.hold                              ? std::string("not judged")
           : *row.hold > kilometres_per_hour(0.0) ? speed_text(*row.hold)
                                                  : std::string("not at any speed");
  }

  std::string cautions_of(const Row& row) const {
    std::string text;
    for (const std::size_t i : row.said)
      if (!of_all(said_[i])) add_item(text, worded(said_[i].first.reason), "; ");
    if (!row.faults.empty()) add_item(text, row.faults, "; ");
    if (text.empty() && row.finding != Finding::fit) text = "what is said of all";
    return text;
  }

  void list_rows() {
    std::vector<const Row*> order;
    order.reserve(rows_.size());
    for (const Row& row : rows_) order.push_back(&row);
    std::sort(order.begin(), order.end(), [](const Row* a, const Row* b) {
      if (a->finding != b->finding) return a->finding < b->finding;
      const Speed none = kilometres_per_hour(-1.0);
      const Speed one = a->hold.value_or(none);
      const Speed other = b->hold.value_or(none);
      return one < other || (!(other < one) && a->number < b->number);
    });
    Table unread{"unread", "Could not be read", "", {"Line no.", "Name", "What is wrong"}, {}};
    for (const Row& row : rows_)
      if (!row.read) unread.rows.push_back({std::to_string(row.number), row.name, row.faults});
    Table field{"field",
                "The field, worst first",
                filled("Of #: # not fit, # not read, # with care, # fit.",
                       {total(), std::to_string(names_with(Finding::unfit).count()),
                        std::to_string(names_with(Finding::unread).count()),
                        std::to_string(names_with(Finding::care).count()),
                        std::to_string(names_with(Finding::fit).count())}),
                {"Name", "Finding", "Hold to", "Governed by", "Cautions", "Tread", "Tyre"},
                {},
                "Finding"};
    Table scrutineer{"scrutineer",
                     "For the scrutineer",
                     "Markings are those in the text that was given.",
                     {"Name", "Finding", "Tread against the law", "Markings", "Age"},
                     {},
                     "Finding"};
    field.rows.reserve(order.size());
    scrutineer.rows.reserve(order.size());
    for (const Row* row : order) {
      const std::string finding = words[static_cast<std::size_t>(row->finding)];
      field.rows.push_back({row->name, finding, hold_text(*row), row->governed_by,
                            cautions_of(*row), row->tread, row->tyre});
      scrutineer.rows.push_back(
          {row->name, finding, row->against_the_law, row->markings, row->age});
    }
    if (!unread.rows.empty()) answer_.tables.push_back(std::move(unread));
    answer_.tables.push_back(std::move(field));
    answer_.tables.push_back(std::move(scrutineer));
  }

  // ---- the conclusion ----

  void conclude_for_all() {
    const Names unfit = names_with(Finding::unfit);
    if (unread_ == rows_.size() && unfit.count() == 0) {
      problem(
          list, "none_read",
          filled("Of # lines none could be read. The first: #", {total(), rows_.front().faults}));
      return;
    }
    hold_to();
    hold_for_all();
    const std::string also = unread_ == 0
                                 ? std::string()
                                 : filled(" Not read: # of #.", {std::to_string(unread_), total()});
    conclude(filled("Fit, all # of them, as far as these readings tell.", {total()}),
             "The field goes only with care: #.",
             filled("Not the whole field is fit: #.#", {"#", also}).c_str());
    say_it_aloud(unfit, also);
  }

  void hold_for_all() {
    if (!answer_.hold_to) return;
    HoldTo& hold = *answer_.hold_to;
    if (hold.speed <= kilometres_per_hour(0.0)) hold.text = "Not with the whole field";
    if (unread_ > 0) hold.why += worded(" This does not stand for what could not be read.");
    std::optional<Speed> rest;
    for (const Row& row : rows_)
      if (row.read && row.finding != Finding::unfit && row.hold)
        rest = rest ? std::min(*rest, *row.hold) : *row.hold;
    if (!rest || !(*rest > hold.speed)) return;
    rest_ = rest;
    caution("without_unfit", Level::note, "",
            filled("Without those that are not fit and those not read, the field holds to #.",
                   {speed_text(*rest)}));
  }

  void say_it_aloud(const Names& unfit, std::string_view unread) {
    if (!answer_.hold_to) return;
    std::string said =
        answer_.hold_to->speed > kilometres_per_hour(0.0)
            ? filled("Field of #: hold to #. The limit is #.",
                     {total(), spoken_speed(answer_.hold_to->speed), answer_.limits.front().label})
            : filled("Field of #: not with all of them. The limit is #.",
                     {total(), answer_.limits.front().label});
    if (unfit.count() > 0) said += filled(" Not fit: #.", {unfit.text()});
    said += unread;
    if (rest_) said += filled(" The rest: hold to #.", {spoken_speed(*rest_)});
    speak(said);
  }

  Input shared_;
  std::optional<water::OnsetsInWater> water_;
  std::vector<Row> rows_;
  std::vector<Said> said_;
  std::vector<Lowest> lowest_;
  std::size_t unread_ = 0;
  std::optional<Speed> rest_;
};

}  // namespace

Answer field_list(const Input& input) { return FieldList(input).run(); }

Sources field_list_sources() { return tyre_check_sources(); }

}  // namespace treadwater::answer
