#include "core/json/answering.hpp"

#include "core/json/putting.hpp"

namespace treadwater::json {
namespace {

namespace a = treadwater::sheets;

Json ids_of(const judge::Sources& sources) {
  judge::Sources once;
  for (const Source* source : sources) judge::add_once(once, *source);
  return list_of(once, [](const Source* source) { return Json(source->id); });
}

const char* level_name(a::Level level, const char* lowest) {
  switch (level) {
    case a::Level::note:
      return lowest;
    case a::Level::care:
      return "care";
    case a::Level::unfit:
      return "unfit";
  }
  return "unfit";
}

Json problem_json(const a::Problem& problem) {
  Json json;
  put_text(json, "field", problem.field);
  put_text(json, "code", problem.code);
  put_text(json, "text", problem.text);
  return json;
}

Json verdict_json(const a::Verdict& verdict) {
  Json json;
  put_text(json, "level", level_name(verdict.level, "fit"));
  put_text(json, "text", verdict.text);
  return json;
}

Json hold_to_json(const a::HoldTo& hold) {
  Json json;
  put_number(json, "kmh", in_kilometres_per_hour(hold.speed));
  put_text(json, "text", hold.text);
  put_text(json, "governed_by", hold.governed_by);
  put_text(json, "why", hold.why);
  return json;
}

Json no_limit_json(const a::NoLimit& none) {
  Json json;
  put_text(json, "text", none.text);
  if (none.own) {
    put_number(json, "own_kmh", in_kilometres_per_hour(*none.own));
    put_text(json, "own_text", none.own_text);
  }
  return json;
}

Json limit_json(const a::Limit& limit, bool governs) {
  Json json;
  put_text(json, "id", limit.id);
  put_text(json, "label", limit.label);
  put_number(json, "kmh", in_kilometres_per_hour(limit.central));
  put_number(json, "low_kmh", in_kilometres_per_hour(limit.low));
  put_number(json, "high_kmh", in_kilometres_per_hour(limit.high));
  put_text(json, "text", limit.text);
  put_flag(json, "governs", governs);
  put_text(json, "why", limit.why);
  put_json(json, "sources", ids_of(limit.sources));
  return json;
}

Json figure_json(const a::Figure& figure) {
  Json json;
  put_text(json, "id", figure.id);
  put_text(json, "label", figure.label);
  put_number(json, "value", figure.value);
  put_text(json, "unit", figure.unit);
  if (figure.low) put_number(json, "low", *figure.low);
  if (figure.high) put_number(json, "high", *figure.high);
  put_text(json, "text", figure.text);
  put_text(json, "note", figure.note);
  put_json(json, "sources", ids_of(figure.sources));
  return json;
}

Json caution_json(const a::Caution& caution) {
  Json json;
  put_text(json, "id", caution.id);
  put_text(json, "level", level_name(caution.level, "note"));
  put_text(json, "text", caution.text);
  put_json(json, "sources", ids_of(caution.sources));
  return json;
}

Json block_json(std::string_view kind, std::string_view id, std::string_view title,
                std::string_view text) {
  Json json;
  put_text(json, "kind", kind);
  put_text(json, "id", id);
  put_text(json, "title", title);
  put_text(json, "text", text);
  return json;
}

Json box_json(const a::Box& box) {
  Json json;
  put_text(json, "shape", "box");
  put_number(json, "x", box.x);
  put_number(json, "y", box.y);
  put_number(json, "width", box.width);
  put_number(json, "height", box.height);
  put_number(json, "radius", box.radius);
  put_text(json, "role", box.role);
  put_text(json, "label", box.label);
  return json;
}

Json drawing_json(const a::Drawing& drawing) {
  Json json = block_json("drawing", drawing.id, drawing.title, drawing.text);
  put_text(json, "unit", "mm");
  put_number(json, "width", drawing.width);
  put_number(json, "height", drawing.height);
  put_json(json, "shapes", list_of(drawing.boxes, box_json));
  return json;
}

Json marking_json(const a::Marking& marking) {
  Json json = block_json("marking", marking.id, marking.title, marking.text);
  put_json(json, "stretches", list_of(marking.stretches, [](const a::Stretch& stretch) {
             Json one;
             put_text(one, "text", stretch.text);
             put_text(one, "meaning", stretch.meaning);
             return one;
           }));
  return json;
}

Json text_list(const std::vector<Text>& texts) {
  return list_of(texts, [](const Text& text) { return Json(std::string_view(text)); });
}

Json number_list(const std::vector<double>& numbers) {
  return list_of(numbers, [](double number) { return Json(number); });
}

void put_table(Json& json, const a::Table& table) {
  put_json(json, "columns", text_list(table.columns));
  put_json(json, "rows", list_of(table.rows, text_list));
}

Json table_json(const a::Table& table) {
  Json json = block_json("table", table.id, table.title, table.text);
  put_table(json, table);
  if (!table.picked_by.empty()) put_text(json, "picked_by", table.picked_by);
  return json;
}

Json axis_json(const a::Axis& axis) {
  Json json;
  put_text(json, "label", axis.label);
  put_text(json, "unit", axis.unit);
  return json;
}

Json series_json(const a::Series& series) {
  Json json;
  put_text(json, "role", series.role);
  put_text(json, "label", series.label);
  put_json(json, "x", number_list(series.x));
  put_json(json, "y", number_list(series.y));
  if (!series.low.empty()) {
    put_json(json, "low", number_list(series.low));
    put_json(json, "high", number_list(series.high));
  }
  return json;
}

Json mark_json(const a::ChartMark& mark) {
  Json json;
  put_number(json, "x", mark.x);
  put_number(json, "y", mark.y);
  put_text(json, "label", mark.label);
  return json;
}

Json chart_json(const a::Chart& chart) {
  Json json = block_json("chart", chart.id, chart.title, chart.text);
  put_json(json, "x", axis_json(chart.x));
  put_json(json, "y", axis_json(chart.y));
  put_json(json, "series", list_of(chart.series, series_json));
  put_json(json, "marks", list_of(chart.marks, mark_json));
  put_table(json, chart.table);
  return json;
}

Json map_json(const a::Map& map) {
  Json json = block_json("map", map.id, map.title, map.text);
  put_json(json, "x", axis_json(map.x));
  put_json(json, "y", axis_json(map.y));
  put_json(json, "value", axis_json(map.value));
  put_json(json, "xs", number_list(map.xs));
  put_json(json, "ys", number_list(map.ys));
  put_json(json, "values", list_of(map.values, number_list));
  put_json(json, "marks", list_of(map.marks, mark_json));
  return json;
}

Json step_json(const a::Step& step) {
  Json json;
  put_text(json, "label", step.label);
  put_text(json, "text", step.text);
  put_number(json, "share", step.share);
  put_text(json, "level", level_name(step.level, "note"));
  return json;
}

Json timeline_json(const a::Timeline& timeline) {
  Json json = block_json("timeline", timeline.id, timeline.title, timeline.text);
  put_json(json, "steps", list_of(timeline.steps, step_json));
  return json;
}

template <class Rows, class Make>
void add_blocks(Json& blocks, const Rows& rows, Make make) {
  for (const auto& row : rows) blocks.push_back(make(row));
}

}  // namespace

Json answer_json(const a::Answer& answer) {
  Json json;
  put_text(json, "sheet", answer.sheet);
  put_flag(json, "ok", answer.ok());
  put_json(json, "problems", list_of(answer.problems, problem_json));
  if (answer.verdict) put_json(json, "verdict", verdict_json(*answer.verdict));
  if (answer.hold_to) put_json(json, "hold_to", hold_to_json(*answer.hold_to));
  if (answer.no_limit) put_json(json, "no_limit", no_limit_json(*answer.no_limit));
  put_json(json, "limits", list_of(answer.limits, [&](const a::Limit& limit) {
             return limit_json(limit, answer.hold_to && &limit == &answer.limits.front());
           }));
  put_json(json, "figures", list_of(answer.figures, figure_json));
  put_json(json, "cautions", list_of(answer.cautions, caution_json));
  Json blocks = list_of(answer.drawings, drawing_json);
  add_blocks(blocks, answer.markings, marking_json);
  add_blocks(blocks, answer.timelines, timeline_json);
  add_blocks(blocks, answer.tables, table_json);
  add_blocks(blocks, answer.spoken,
             [](const a::Spoken& s) { return block_json("spoken", s.id, s.title, s.text); });
  add_blocks(blocks, answer.charts, chart_json);
  add_blocks(blocks, answer.maps, map_json);
  put_json(json, "blocks", blocks);
  put_json(json, "sources", sources_json(a::sources_used(answer)));
  put_phrase(json, "safety", a::safety_words);
  return json;
}

}  // namespace treadwater::json
