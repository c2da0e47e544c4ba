#include "core/standard/tread_law.hpp"

#include <iterator>

namespace treadwater::standard {
namespace {

constexpr Phrase middle =
    Phrase("main grooves in the middle three quarters of the tread, all round");

constexpr WinterRule nordic(MonthDay from, MonthDay to, Phrase words, bool any_tyre = false) {
  return {millimetres(3.0), millimetres(3.0), from, to, true, false, any_tyre, words};
}

constexpr TreadLaw laws[] = {
    {"GB",
     Phrase("Great Britain"),
     millimetres(1.6),
     Phrase("a continuous band of the middle three quarters of the tread, all round"),
     true,
     {"law-gb", "The Road Vehicles (Construction and Use) Regulations", "reg. 27(1)(f) and (4)",
      "1986", Standing::secondary},
     std::nullopt,
     std::nullopt},
    {"EU",
     Phrase("European Union, elsewhere"),
     millimetres(1.6),
     middle,
     true,
     {"law-eu", "Council Directive 89/459/EEC on tread depth", "categories M1, N1, O1, O2", "1989",
      Standing::secondary},
     std::nullopt,
     std::nullopt},
    {"DE",
     Phrase("Germany"),
     millimetres(1.6),
     middle,
     true,
     {"law-de", "Straßenverkehrs-Zulassungs-Ordnung (StVZO)", "§ 36", "", Standing::published},
     std::nullopt,
     std::nullopt},
    {"AT",
     Phrase("Austria"),
     millimetres(1.6),
     middle,
     true,
     {"law-at", "Kraftfahrgesetz-Durchführungsverordnung (KDV)",
      "§ 4(4), as printed by the federal portal", "1967", Standing::published},
     WinterRule{millimetres(4.0),
                millimetres(5.0),
                {11, 1},
                {4, 15},
                true,
                true,
                false,
                Phrase("between 1 November and 15 April in wintry conditions")},
     Source{"law-at-winter", "Kraftfahrgesetz-Durchführungsverordnung (KDV)",
            "§ 4, winter tyres: 4 mm radial, 5 mm diagonal", "1967", Standing::published}},
    {"FI",
     Phrase("Finland"),
     millimetres(1.6),
     middle,
     true,
     {"law-fi", "Council Directive 89/459/EEC on tread depth", "categories M1, N1, O1, O2", "1989",
      Standing::secondary},
     nordic({11, 1}, {3, 31},
            Phrase("between 1 November and 31 March when the weather or road demands it")),
     Source{"law-fi-winter", "Finnish road traffic law, winter tyres", "3 mm", "",
            Standing::secondary}},
    {"SE",
     Phrase("Sweden"),
     millimetres(1.6),
     middle,
     true,
     {"law-se", "Swedish transport agency rules on tyres", "tread depth, light vehicles", "",
      Standing::secondary},
     nordic({12, 1}, {3, 31}, Phrase("between 1 December and 31 March in winter road conditions")),
     Source{"law-se-winter", "Swedish transport agency rules on tyres",
            "winter tyres, light vehicles", "", Standing::secondary}},
    // Every tyre, not the winter tyre alone, must have 3 mm in Norway's season; the season's end
    // moves with Easter, so this is the latest possible day.
    {"NO",
     Phrase("Norway"),
     millimetres(1.6),
     middle,
     true,
     {"law-no", "Norwegian regulations on the use of vehicles", "s. 1-4", "", Standing::secondary},
     nordic({11, 1}, {5, 3},
            Phrase("from 1 November to the Sunday after Easter (in the north from 16 October)"),
            true),
     Source{"law-no-winter", "Norwegian regulations on the use of vehicles", "s. 1-4, season", "",
            Standing::secondary}},
    {"CZ",
     Phrase("Czechia"),
     millimetres(1.6),
     middle,
     true,
     {"law-cz", "Council Directive 89/459/EEC on tread depth", "categories M1, N1, O1, O2", "1989",
      Standing::secondary},
     WinterRule{
         millimetres(4.0),
         millimetres(4.0),
         {11, 1},
         {3, 31},
         true,
         false,
         false,
         Phrase("between 1 November and 31 March when snow or ice lies or is to be expected")},
     Source{"law-cz-winter", "Act 361/2000 on road traffic", "s. 40a", "2000",
            Standing::secondary}},
    // 2/32 in. The federal inspection standard itself was not seen; a state rule has its wording.
    {"US",
     Phrase("United States"),
     thirty_seconds(2.0),
     Phrase("any major groove, at three places round the tyre"),
     false,
     {"law-us", "49 CFR 570.9, as repeated in COMAR 11.14.05.05", "tread depth", "",
      Standing::secondary},
     std::nullopt,
     std::nullopt},
    {"elsewhere",
     Phrase("Elsewhere"),
     millimetres(1.6),
     Phrase("the shallowest main groove"),
     false,
     {"law-elsewhere", "The commonest legal minimum, taken where the local law is not known here",
      "ask the local authority", "", Standing::common_practice},
     std::nullopt,
     std::nullopt},
};

constexpr bool not_before(MonthDay a, MonthDay b) {
  return a.month > b.month || (a.month == b.month && a.day >= b.day);
}

}  // namespace

TreadLaws tread_laws() { return {std::begin(laws), std::end(laws)}; }

const TreadLaw* find_tread_law(std::string_view id) {
  for (const TreadLaw& law : tread_laws())
    if (law.id == id) return &law;
  return nullptr;
}

bool in_season(const WinterRule& rule, MonthDay day) {
  return not_before(day, rule.from) || not_before(rule.to, day);
}

}  // namespace treadwater::standard
