// The sheet `field-list`: a list of tyres (or of each car's worst one) in one water on one road,
// each judged as in the check of one tyre -> a verdict and a maximum speed for the whole field, the
// rows worst first, what could not be read, and a scrutineer's list.
//
// One unreadable row does not fail the whole answer: it is listed with its reason, and the field is
// never called fit while there is one. The maximum speed is the lowest of all rows; one more row
// never raises it, and the order of rows does not matter. Range: 5 000 rows.
#include "core/sheets/sheet.hpp"

#include "core/sheets/answer_builder.hpp"
#include "core/sheets/field_list/fields.hpp"
#include "core/sheets/field_list/judging.hpp"
#include "core/sheets/field_list/lists.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::field_list {

extern const SheetHead head;
const SheetHead head{"field-list", Phrase("A whole field"),
                     Phrase("A list of tyres before a start: which are fit, which are not, and how "
                            "fast may all of them go through this water?"),
                     true, 1024 * 1024};

namespace {

Preset example() {
  return {"example",
          Phrase("An invented case: six cars of a made-up club sprint, on a wet morning"),
          Phrase("One tyre too worn, one line that cannot be read."),
          {{"water", "3 mm"},
           {"rows.0.name", "7"},
           {"rows.0.size", "205/55 R16 91V M+S"},
           {"rows.0.load", "390 kg"},
           {"rows.0.pressure", "2.3 bar"},
           {"rows.0.tread", "6.5 mm"},
           {"rows.0.date_code", "1824"},
           {"rows.1.name", "12"},
           {"rows.1.size", "195/65 R15 91T"},
           {"rows.1.load", "360 kg"},
           {"rows.1.pressure", "2.2 bar"},
           {"rows.1.tread", "1.4 mm"},
           {"rows.1.date_code", "0719"},
           {"rows.2.name", "15"},
           {"rows.2.size", "225/45 R17 94W XL 3PMSF"},
           {"rows.2.load", "420 kg"},
           {"rows.2.pressure", "2.4 bar"},
           {"rows.2.tread", "5 mm"},
           {"rows.2.tyre_kind", "winter"},
           {"rows.3.name", "21"},
           {"rows.3.size", "185/60 R14"},
           {"rows.3.load", "310 kg"},
           {"rows.3.pressure", "2.1 bar"},
           {"rows.3.tread", "4 mm"},
           {"rows.4.name", "33"},
           {"rows.4.size", "205/50 R15 86V FOR COMPETITION USE ONLY"},
           {"rows.4.load", "280 kg"},
           {"rows.4.pressure", "1.9 bar"},
           {"rows.4.tread", "3.5 mm"},
           {"rows.4.tyre_kind", "cut-slick"},
           {"rows.5.name", "40"},
           {"rows.5.size", "205/55 R16 91V"},
           {"rows.5.load", "400 kg"},
           {"rows.5.pressure", "2.2 bar"},
           {"rows.5.tread", "about 5"}}};
}

sheets::Field describe_rows() {
  return sheets::describe(
      rows,
      {also(sheets::describe(name),
            "No|No.|Number|Start number|Start no|Bib|Name|Car|Entry|Driver|Competitor|Nr|Nr.|"
            "Startnummer|Fahrer|Fahrzeug|Numéro|N°|Dossard|Nom|Pilote|Voiture|Numero|Nimi|Auto"),
       also(sheets::describe(size), column::size), also(sheets::describe(load), column::load),
       also(sheets::describe(pressure), column::pressure),
       also(sheets::describe(tread), column::tread),
       also(sheets::describe(fields::tyre_kind), column::tyre_kind),
       also(sheets::describe(date_code), column::date_code)});
}

}  // namespace

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(fields::wetness), sheets::describe(water),
       sheets::describe(fields::surface), sheets::describe(fields::place),
       sheets::describe(pressure_state), sheets::describe(speed), describe_rows()},
      example()};
  return sheet;
}

namespace {

std::string total(const Field& field) { return std::to_string(field.rows.size()); }

std::string said_of_unread(const Field& field) {
  if (field.unread == 0) return {};
  return say("Not read: # of #.", {std::to_string(field.unread), total(field)});
}

// Without those not fit, those not read and those whose speed is not known, if that is faster.
std::optional<Speed> speed_of_the_rest(const Field& field, Speed of_all) {
  std::optional<Speed> rest;
  for (const Row& row : field.rows)
    if (row.read && row.standing != Standing::unfit && row.hold)
      rest = rest ? std::min(*rest, *row.hold) : *row.hold;
  return rest && *rest > of_all ? rest : std::nullopt;
}

void tell_hold(const judge::HoldTo& hold, const Field& field, AnswerBuilder& answer) {
  answer.tell(hold);
  HoldTo& told = *answer.answer().hold_to;
  if (hold.stands_still()) told.text = Phrase("Not with the whole field");
  if (field.unread > 0)
    told.why = sentences({told.why, say("This does not stand for what could not be read.")});
}

void tell_speed(const std::optional<judge::HoldTo>& hold, const std::optional<judge::NoLimit>& none,
                const Field& field, AnswerBuilder& answer) {
  if (hold) tell_hold(*hold, field, answer);
  // A field with lines that could not be read is never called without a limit.
  if (field.unread == 0) answer.tell(std::nullopt, none);
}

void conclude(const judge::Verdict& verdict, const Field& field, AnswerBuilder& answer) {
  VerdictWords words{say("Fit, all # of them, as far as these readings tell.", {total(field)})};
  words.care = Phrase("The field goes only with care: #.");
  words.unfit = Phrase("Not the whole field is fit: #.");
  if (verdict.level == Level::unfit) words.after = said_of_unread(field);
  answer.conclude(verdict, words);
}

std::string said_of_all(const std::optional<judge::HoldTo>& hold, const Field& field,
                        UnitSystem units) {
  if (!hold) return say("Field of #: no speed for all of them.", {total(field)});
  const std::string limit = label(hold->governing, units);
  return hold->stands_still()
             ? say("Field of #: not with all of them. The limit is #.", {total(field), limit})
             : say("Field of #: hold to #. The limit is #.",
                   {total(field), say_speed_aloud(hold->speed, units), limit});
}

std::string read_out(const std::optional<judge::HoldTo>& hold, std::optional<Speed> rest,
                     const Field& field, UnitSystem units) {
  const Names unfit = names_of(field, Standing::unfit);
  return sentences(
      {said_of_all(hold, field, units),
       unfit.count() > 0 ? say("Not fit: #.", {unfit.text()}) : std::string(),
       said_of_unread(field),
       rest ? say("The rest: hold to #.", {say_speed_aloud(*rest, units)}) : std::string()});
}

bool none_read(const Field& field) {
  return field.unread == field.rows.size() && names_of(field, Standing::unfit).count() == 0;
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  Shared shared;
  read_shared(form, shared);
  Field field = gather_rows(form);
  if (!form.ok()) {
    answer.take_problems(form);
    return answer.take();
  }
  judge_rows(form, shared, field);
  judge::Findings findings = findings_of(field);
  if (none_read(field))
    form.problem(rows, "none_read",
                 say("Of # lines none could be read. The first: #",
                     {total(field), field.rows.front().faults}));
  const bool judged = form.ok();
  answer.take_problems(form);

  std::optional<judge::HoldTo> hold;
  std::optional<Speed> rest;
  if (judged) hold = judge::hold_to(findings, answer.units());
  if (hold || (judged && findings.no_speed))
    rest = speed_of_the_rest(field, hold ? hold->speed : Speed());
  if (rest) findings.add(judge::finding::speed_of_the_rest, {*rest});
  answer.tell(findings);
  list_rows(field, answer);
  if (!judged) return answer.take();
  tell_speed(hold, judge::no_limit(findings, answer.units()), field, answer);
  conclude(judge::verdict(findings, hold), field, answer);
  if (hold || rest || names_of(field, Standing::unfit).count() > 0)
    answer.speak(read_out(hold, rest, field, answer.units()));
  return answer.take();
}

}  // namespace treadwater::sheets::field_list
