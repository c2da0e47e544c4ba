// A long row of figures held as one short text, so that a table or a formula does not change by
// accident: nine digits of each are taken, which no other compiler or C library moves. Whoever
// changes a figure on purpose puts the new text in, and says in the commit why.
#pragma once

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/words/phrase.hpp"
#include "tests/support/fingerprint.hpp"

namespace treadwater::testing {

class Row {
 public:
  template <class... Figures>
  void add(const Figures&... figures) {
    (one(figures), ...);
  }

  // "120 figures, a1b065d05dbcd7c8"
  std::string text() const {
    return std::to_string(figures_.size()) + " figures, " + fingerprint(figures_);
  }

 private:
  void one(double figure) {
    if (std::isnan(figure)) {
      one("no number");
      return;
    }
    char nine[40];
    std::snprintf(nine, sizeof nine, "%.9g", figure + 0.0);
    figures_.push_back(std::strtod(nine, nullptr));
  }
  void one(int figure) { figures_.push_back(figure); }
  void one(bool figure) { figures_.push_back(figure ? 1.0 : 0.0); }
  void one(std::string_view text) {
    for (const char c : text) figures_.push_back(static_cast<unsigned char>(c));
    figures_.push_back(-1.0);
  }
  void one(const std::string& text) { one(std::string_view(text)); }
  void one(Phrase phrase) { one(phrase.english()); }
  void one(const char* text) { one(std::string_view(text)); }
  template <class Kind>
  void one(Quantity<Kind> quantity) {
    one(quantity.stored());
  }
  void one(Temperature t) { one(in_kelvin(t)); }
  template <class Figure>
  void one(const std::optional<Figure>& figure) {
    one(figure.has_value());
    if (figure) one(*figure);
  }

  std::vector<double> figures_;
};

}  // namespace treadwater::testing
