// The form of the sheet `wear-log`.
#pragma once

#include "core/judge/wear.hpp"
#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::wear_log {

inline constexpr ListField readings{"readings", Phrase("Reading"),
                                    Phrase("One line for each tyre each time you measure."), 200};

// Nothing for any but the four.
inline std::optional<car::Corner> corner_of(std::string_view id) {
  for (const car::CornerRow& row : car::corners)
    if (row.id == id) return row.corner;
  return std::nullopt;
}
inline constexpr ChoiceField<std::optional<car::Corner>> tyre{
    "tyre", Phrase("Which tyre"), Phrase(),
    [] {
      std::vector<Choice> choices;
      for (const car::CornerRow& row : car::corners) choices.push_back({row.id, row.name});
      choices.push_back({"other", judge::another_place});
      return choices;
    },
    corner_of};
inline constexpr std::string_view tyre_column =
    "Tyre|Corner|Wheel|Position|Pneu|Roue|Reifen|Rad|Rengas";
inline constexpr DateField date{"date", Phrase("Day"), Phrase(), required};
inline constexpr QuantityField<Length> depth{"depth",
                                             Phrase("Tread depth"),
                                             Phrase("In the shallowest main groove."),
                                             required,
                                             "0 mm",
                                             "25 mm (31/32 in)",
                                             "5.5 mm",
                                             in_depth};
inline constexpr QuantityField<Length> odometer{"odometer",
                                                Phrase("Odometer"),
                                                Phrase("If you want distances."),
                                                optional,
                                                "0 km",
                                                "2 000 000 km",
                                                "41 200 km",
                                                in_kilometres_of_road};

}  // namespace treadwater::sheets::wear_log
