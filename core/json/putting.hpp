// Shared by the writers of this room: putting members into an object, one kind of value each.
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include "core/json/writing.hpp"
#include "core/judge/finding.hpp"
#include "core/words/catalogue.hpp"

namespace treadwater::json {

inline std::string text_of(std::string_view view) { return std::string(view); }

inline void put_text(Json& object, std::string_view key, std::string_view text) {
  object.put(key, Json(text));
}
// A form's texts are phrases, translated here; an answer's texts are translated already. Ids, links
// and source titles do not change.
inline void put_phrase(Json& object, std::string_view key, Phrase phrase) {
  put_text(object, key, spoken(phrase));
}
inline void put_flag(Json& object, std::string_view key, bool value) {
  object.put(key, Json::flag(value));
}
inline void put_json(Json& object, std::string_view key, const Json& value) {
  object.put(key, value);
}

// NaN and infinity stop here: the member is left out.
inline void put_number(Json& object, std::string_view key, double value) {
  if (std::isfinite(value)) object.put(key, Json(value));
}

// One object for each row.
template <class Rows, class Make>
Json list_of(const Rows& rows, Make make) {
  Json list = Json::array();
  for (const auto& row : rows) list.push_back(make(row));
  return list;
}

Json source_json(const Source& source);
Json sources_json(const judge::Sources& sources);

}  // namespace treadwater::json
