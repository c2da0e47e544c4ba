// Writes JSON front to back, as text: answers need no document, and the page's module is some
// kilobytes smaller without one.
#pragma once

#include <string>
#include <string_view>

namespace treadwater::json {

class Json {
 public:
  Json() = default;                     // an object, filled member by member
  explicit Json(std::string_view text)  // text; an invalid byte becomes U+FFFD
      : close_(none) {
    add_text(text);
  }
  explicit Json(double number);  // null if it is not finite
  static Json array();
  static Json flag(bool value);

  // Members of an object; each key once.
  void put(std::string_view key, const Json& value);
  void push_back(const Json& value);  // into an array
  bool empty() const { return written_.size() < 2; }
  std::string text() const;

 private:
  static constexpr char none = '\0';

  void part_from_the_last();
  void add_text(std::string_view text);
  void add_to(std::string& whole) const;

  std::string written_;  // all but the closing bracket; empty if there are no members
  char close_ = '}';
};

}  // namespace treadwater::json
