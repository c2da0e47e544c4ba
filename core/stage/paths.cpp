#include "core/stage/paths.hpp"

#include <utility>

namespace treadwater::stage {
namespace {

constexpr double most_paths = 4096.0;
constexpr std::size_t drawn_paths = 1000;

}  // namespace

Paths::Paths(const Model& model) : m_(model) {
  double count = 1.0;
  for (std::size_t i = 0; i < m_.stages; ++i) {
    std::vector<std::size_t> possible;
    for (std::size_t w = 0; w < weathers; ++w) {
      bool can = false;
      for (const Chances& row : m_.follows[i]) can = can || row[w] > 0.0;
      if (can) possible.push_back(w);
    }
    count *= static_cast<double>(possible.size());
    possible_.push_back(std::move(possible));
  }
  every_ = count <= most_paths;
  count_ = every_ ? static_cast<std::size_t>(count) : drawn_paths;
}

double Paths::path(std::size_t n, std::vector<std::size_t>& weather) {
  double chance = every_ ? 1.0 : 1.0 / static_cast<double>(drawn_paths);
  std::size_t before = 0;
  for (std::size_t i = 0; i < m_.stages; ++i) {
    const Chances& row = m_.follows[i][before];
    if (every_) {
      before = possible_[i][n % possible_[i].size()];
      n /= possible_[i].size();
      chance *= row[before];
    } else {
      before = draw(i, row);
    }
    weather[i] = before;
  }
  return chance;
}

std::size_t Paths::draw(std::size_t stage, const Chances& chances) {
  double u = uniform();
  std::size_t drawn = possible_[stage].back();
  for (const std::size_t w : possible_[stage]) {
    u -= chances[w];
    if (u < 0.0) {
      drawn = w;
      break;
    }
  }
  // A rounding remainder must still be a weather that can follow.
  for (std::size_t w = weathers; !(chances[drawn] > 0.0);) drawn = --w;
  return drawn;
}

}  // namespace treadwater::stage
