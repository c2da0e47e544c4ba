// Fields for a sheet's form, and the choices that several sheets offer.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

Field text_field(std::string_view id, std::string_view label, std::string_view hint, bool required,
                 std::string_view example);
// `units`: the first is that of a bare number. `preferred`: the picker's for metric, uk and us.
Field quantity_field(std::string_view id, std::string_view hint, bool required,
                     const QuantityRequest& request, std::vector<std::string_view> units,
                     std::vector<std::string_view> preferred);
// A plain number: a count or a share in per cent. The request's dimension is `number`.
Field number_field(std::string_view id, std::string_view hint, bool required,
                   const QuantityRequest& request);
// The first choice is the initial one.
Field choice_field(std::string_view id, std::string_view label, std::string_view hint,
                   std::vector<Choice> choices);
Field yes_no_field(std::string_view id, std::string_view label, std::string_view hint,
                   std::string_view initial);
Field date_field(std::string_view id, std::string_view label, std::string_view hint, bool required);
// `label` names one row: "Corner". With `row_names` the rows are fixed: "Front left".
Field list_field(std::string_view id, std::string_view label, std::string_view hint,
                 std::vector<Field> fields, std::vector<std::string_view> row_names = {});

Field units_field();

std::vector<Choice> surface_choices();
std::vector<Choice> tyre_kind_choices();
std::vector<Choice> place_choices();
std::vector<Choice> forecast_choices();  // "none", then the words of each scale

}  // namespace treadwater::answer
