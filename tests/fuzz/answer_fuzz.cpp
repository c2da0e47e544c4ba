// libFuzzer target for answer(): any bytes as a sheet's input, or the example of a sheet with
// fields changed, left out, added and turned into other JSON. No crash, and these always hold: the
// answer is JSON; it has problems, or a verdict, never both; with problems it has no verdict, no
// speed to hold to and nothing to read out; a speed to hold to is below 130 km/h, the first limit
// governs it, and without it none does; its levels and its sources are known; no number is none.
//
// Build:  clang++ -std=c++20 -O2 -g1 -fsanitize=fuzzer,address,undefined -DJSON_NOEXCEPTION -I.
//           -isystem build/native/headers tests/fuzz/answer_fuzz.cpp core/*/*.cpp
// Run:    ASAN_OPTIONS=quarantine_size_mb=1:malloc_context_size=0
//           ./a.out -max_len=400 -timeout=60 new tests/fuzz/corpus/answer     (new: an empty
//           folder)
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "core/json/contract.hpp"

namespace {

using Json = nlohmann::json;

class Bytes {
 public:
  Bytes(const std::uint8_t* data, std::size_t size) : data_(data), left_(size) {}
  std::size_t below(std::size_t n) { return n == 0 ? 0 : next() % n; }
  std::string text(std::size_t most) {
    std::string said;
    for (std::size_t n = below(most + 1); n > 0 && left_ > 0; --n)
      said.push_back(static_cast<char>(next()));
    return said;
  }
  std::string rest() {
    std::string said(reinterpret_cast<const char*>(data_), left_);
    left_ = 0;
    return said;
  }
  bool any() const { return left_ > 0; }

 private:
  std::uint8_t next() {
    if (left_ == 0) return 0;
    --left_;
    return *data_++;
  }
  const std::uint8_t* data_;
  std::size_t left_;
};

constexpr const char* values[] = {
    "",
    "0",
    "1",
    "-1",
    "0 mm",
    "1.6 mm",
    "7/32 in",
    "25 mm",
    "100 mm",
    "1000 mm",
    "0 kPa",
    "150 kPa",
    "2,5 bar",
    "33 psi",
    "1000 kPa",
    "20 kg",
    "430 kg",
    "8000 kg",
    "1 km/h",
    "50 mph",
    "130 km/h",
    "500 km/h",
    "-50 °C",
    "15 °C",
    "150 °C",
    "0 km",
    "100 km",
    "100",
    "50 %",
    "1e308",
    "nan",
    "1e-320",
    "yes",
    "no",
    "banana",
    "2026-11-25",
    "1970-01-01",
    "2099-12-31",
    "2322",
    "205/55 R16 91V",
    "T125/80 D15 95M",
    "195/75 R16 C 107/105R",
    "165 SR 13",
    "5.00-15",
    "710x90",
    "33x12.50 R15 LT 108Q",
    "P225/60R16",
    "metric",
    "us",
    "uk",
};

const Json& description() {
  static const Json json = Json::parse(treadwater::json::describe());
  return json;
}

Json value(Bytes& bytes, const Json& field) {
  switch (bytes.below(8)) {
    case 0:
      return bytes.text(30);
    case 1:
      return static_cast<int>(bytes.below(256)) - 128;
    case 2:
      return Json(nullptr);
    case 3:
      return bytes.below(2) == 1 ? Json(true) : Json::array({Json::object(), 1, "x"});
    case 4:
      if (field.contains("choices") && !field["choices"].empty())
        return field["choices"][bytes.below(field["choices"].size())]["value"];
      return field.value("example", "");
    default:
      return values[bytes.below(std::size(values))];
  }
}

void change(Bytes& bytes, const Json& fields, Json& input) {
  if (fields.empty()) return;
  const Json& field = fields[bytes.below(fields.size())];
  const std::string id = field["id"];
  if (field["kind"] == "list" && bytes.below(8) != 0) {
    Json& rows = input[id];
    if (!rows.is_array()) rows = Json::array();
    if (rows.empty() || (bytes.below(6) == 0 && rows.size() < 12)) rows.push_back(Json::object());
    Json& row = rows[bytes.below(rows.size())];
    if (!row.is_object()) row = Json::object();
    if (bytes.below(10) == 0)
      rows.erase(rows.begin());
    else
      change(bytes, field["fields"], row);
    return;
  }
  if (bytes.below(6) == 0)
    input.erase(id);
  else
    input[id] = value(bytes, field);
}

const char* fault(const Json& answer) {
  if (!answer.is_object()) return "the answer is JSON";
  const bool ok = answer["ok"] == true;
  if (ok != answer["problems"].empty()) return "an answer is ok where it has no problems";
  if (ok != answer.contains("verdict")) return "there is a verdict where there is no problem";
  const bool held = answer.contains("hold_to");
  if (!ok && (held || answer.contains("no_limit")))
    return "there is no speed to hold to where there is a problem";
  if (held && answer.contains("no_limit")) return "there is a speed to hold to, or no limit";
  for (const Json& block : answer["blocks"])
    if (!ok && block["kind"] == "spoken") return "nothing is read out where there is a problem";
  for (const Json& problem : answer["problems"])
    if (problem["text"].get<std::string>().size() < 12 || problem["code"] == "")
      return "a problem has a sentence";
  if (ok && answer["verdict"]["text"].get<std::string>().size() < 8) return "a verdict has a text";
  for (const char* part : {"figures", "limits", "cautions"})
    for (const Json& said : answer[part])
      for (const Json& source : said["sources"])
        if (!answer["sources"].contains(source.get<std::string>())) return "a source is known";
  for (const Json& figure : answer["figures"])
    if (!figure["value"].is_number()) return "a figure is a number";
  bool first = held;
  for (const Json& limit : answer["limits"]) {
    if (limit["governs"] != first) return "the first limit governs what is held to, and no other";
    first = false;
  }
  if (answer.contains("no_limit") && answer["no_limit"].contains("own_kmh") &&
      !(answer["no_limit"]["own_kmh"] >= 125.0))
    return "no limit is below that of the road";
  for (const Json& limit : answer["limits"])
    if (!(limit["low_kmh"] <= limit["kmh"]) || !(limit["kmh"] <= limit["high_kmh"]))
      return "a limit lies within its band";
  if (held) {
    if (!(answer["hold_to"]["kmh"] >= 0.0 && answer["hold_to"]["kmh"] < 130.0))
      return "a speed is a number, below that of the road's own limit";
    for (const Json& limit : answer["limits"])
      if (limit["id"] != "puddles" &&
          answer["hold_to"]["kmh"].get<double>() > limit["low_kmh"].get<double>() + 1e-9)
        return "the speed to hold to is under every limit";
  }
  return nullptr;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  Bytes bytes(data, size);
  const Json& sheets = description()["sheets"];
  const Json& sheet = sheets[bytes.below(sheets.size())];
  std::string input;
  if (bytes.below(16) == 0) {
    input = bytes.rest();
  } else {
    Json filled = sheet["example"]["input"];
    filled["today"] = "2026-11-25";
    while (bytes.any()) change(bytes, sheet["fields"], filled);
    input = filled.dump(-1, ' ', false, Json::error_handler_t::replace);
  }
  const std::string said = treadwater::json::answer(sheet["id"].get<std::string>(), input);
  const Json answer = Json::parse(said, nullptr, false);
  if (const char* wrong = fault(answer)) {
    std::fprintf(stderr, "%s\n--\n%s\n--\n%s\n", wrong, input.c_str(), said.c_str());
    std::abort();
  }
  return 0;
}
