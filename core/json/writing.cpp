#include "core/json/writing.hpp"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/quantity/text.hpp"

namespace treadwater::json {

Json::Json(double number) : close_(none) {
  char digits[64];
  if (std::isfinite(number))
    written_.assign(digits, nlohmann::detail::to_chars(digits, digits + sizeof digits, number));
  else
    written_ = "null";
}

Json Json::array() {
  Json json;
  json.written_ = '[';
  json.close_ = ']';
  return json;
}

Json Json::flag(bool value) {
  Json json;
  json.written_ = value ? "true" : "false";
  json.close_ = none;
  return json;
}

void Json::put(std::string_view key, const Json& value) {
  part_from_the_last();
  add_text(key);
  written_ += ':';
  value.add_to(written_);
}

void Json::push_back(const Json& value) {
  part_from_the_last();
  value.add_to(written_);
}

std::string Json::text() const {
  std::string whole;
  add_to(whole);
  return whole;
}

void Json::add_to(std::string& whole) const {
  whole += written_;
  if (written_.empty()) whole += '{';
  if (close_ != none) whole += close_;
}

void Json::part_from_the_last() {
  if (written_.empty())
    written_ = '{';
  else if (written_.size() > 1)
    written_ += ',';
}

void Json::add_text(std::string_view text) {
  constexpr std::string_view hex = "0123456789abcdef";
  const auto plain = [](char c) { return c >= 0x20 && c < 0x7F && c != '"' && c != '\\'; };
  written_ += '"';
  while (!text.empty()) {
    std::size_t many = 0;
    while (many < text.size() && plain(text[many])) ++many;
    written_.append(text.data(), many);
    text.remove_prefix(many);
    if (text.empty()) break;
    const std::size_t length = utf8_length(text);
    const char c = text[0];
    if (length == 0) {
      written_ += "\uFFFD";
    } else if (static_cast<unsigned char>(c) < 0x20) {
      written_ += "\\u00";
      written_ += c < 0x10 ? '0' : '1';
      written_ += hex[static_cast<std::size_t>(c & 0x0F)];
    } else {
      if (c == '"' || c == '\\') written_ += '\\';
      written_ += text.substr(0, length);
    }
    text.remove_prefix(length == 0 ? 1 : length);
  }
  written_ += '"';
}

}  // namespace treadwater::json
