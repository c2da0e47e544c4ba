// A JSON object taken straight into an Input.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "core/sheets/input.hpp"

namespace treadwater::json {

// Reads a JSON object straight into an Input, each value as the text a person would have typed; no
// document is built. A field holds a value, or a list of rows, each an object of values; anything
// else is a problem that names the field.
class FieldReader {
 public:
  using number_integer_t = nlohmann::json::number_integer_t;
  using number_unsigned_t = nlohmann::json::number_unsigned_t;
  using number_float_t = nlohmann::json::number_float_t;
  using string_t = nlohmann::json::string_t;
  using binary_t = nlohmann::json::binary_t;

  sheets::Input input;
  std::vector<std::string> refused;  // fields with a value that no field takes
  std::vector<std::string> paths;    // names of fields that are paths, as "rows.0.load"
  bool is_object = false;

  bool read(std::string_view text) {
    is_object = nlohmann::json::sax_parse(text, this) && is_object;
    return is_object;
  }

  bool null() { return value(""); }
  bool boolean(bool yes) { return value(yes ? "yes" : "no"); }
  bool number_integer(number_integer_t number) { return value(std::to_string(number)); }
  bool number_unsigned(number_unsigned_t number) { return value(std::to_string(number)); }
  bool number_float(number_float_t, const string_t& as_written) { return value(as_written); }
  bool string(string_t& text) { return value(text); }
  bool binary(binary_t&) { return false; }
  bool key(string_t& name) {
    if (depth_ == field_depth) {
      field_ = name;
      if (name.find('.') != std::string::npos) paths.push_back(name);
    }
    if (depth_ == row_depth) row_field_ = name;
    return true;
  }
  bool start_object(std::size_t) {
    if (depth_ == 0)
      is_object = true;
    else if (depth_ != list_depth)
      refuse();
    return enter();
  }
  bool start_array(std::size_t) {
    if (depth_ == field_depth)
      rows_ = 0;
    else
      refuse();
    return enter();
  }
  bool end_object() {
    if (depth_ == row_depth) ++rows_;
    return leave();
  }
  bool end_array() {
    if (depth_ == list_depth) input.set_rows(field_, rows_);
    return leave();
  }
  template <class Error>
  bool parse_error(std::size_t, const std::string&, const Error&) {
    return false;
  }

 private:
  // How many objects and lists are open at a field, at a list's row and at a row's field.
  static constexpr int field_depth = 1;
  static constexpr int list_depth = 2;
  static constexpr int row_depth = 3;

  bool value(std::string text) {
    if (depth_ == field_depth) input.set(field_, std::move(text));
    if (depth_ == list_depth) refuse();
    if (depth_ == row_depth)
      input.set(sheets::row_path(field_, rows_, row_field_), std::move(text));
    return depth_ > 0;  // a bare value is not an object
  }
  void refuse() {
    if (refused.empty() || refused.back() != field_) refused.push_back(field_);
  }
  bool enter() {
    ++depth_;
    return is_object;
  }
  bool leave() {
    --depth_;
    return true;
  }

  std::string field_;
  std::string row_field_;
  std::size_t rows_ = 0;
  int depth_ = 0;
};

}  // namespace treadwater::json
