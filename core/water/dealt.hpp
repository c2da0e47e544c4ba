// Values dealt into buckets of equal width, so that what is asked of their order needs only a few
// of them sorted: several times as fast in WebAssembly as std::sort. Range: one value or more, all
// finite.
#pragma once

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>
#include <vector>

namespace treadwater::water {

class Dealt {
 public:
  explicit Dealt(const std::vector<double>& values) : values_(values), begin_(buckets + 1) {
    least_ = values.front();
    most_ = least_;
    for (const double value : values) {
      least_ = std::min(least_, value);
      most_ = std::max(most_, value);
    }
    per_width_ = (buckets - 1) / std::max(1e-9, most_ - least_);
    for (const double value : values) ++begin_[bucket_of(value) + 1];
    for (std::size_t i = 1; i < begin_.size(); ++i) begin_[i] += begin_[i - 1];
  }

  // The values that so many are below. The greatest may be there many times: they are not sorted.
  std::array<double, 2> at_ranks(std::size_t low, std::size_t high) const {
    const std::size_t low_bucket = bucket_at(low);
    const std::size_t high_bucket = bucket_at(high);
    std::vector<double> lows, highs;
    for (const double value : values_) {
      const std::size_t bucket = bucket_of(value);
      if (bucket == low_bucket && value < most_) lows.push_back(value);
      if (bucket == high_bucket && value < most_) highs.push_back(value);
    }
    const auto at = [&](std::vector<double>& few, std::size_t place) {
      sort_few(few);
      return place < few.size() ? few[place] : most_;
    };
    return {at(lows, low - begin_[low_bucket]), at(highs, high - begin_[high_bucket])};
  }

  std::vector<double> sorted() && {
    std::vector<double> result(values_.size());
    for (const double value : values_) result[begin_[bucket_of(value)]++] = value;
    sort_few(result);
    return result;
  }

 private:
  static constexpr int buckets = 4096;

  std::size_t bucket_of(double value) const {
    return static_cast<std::size_t>((value - least_) * per_width_);
  }

  std::size_t bucket_at(std::size_t rank) const {
    const auto after = std::upper_bound(begin_.begin(), begin_.end(), rank);
    return static_cast<std::size_t>(after - begin_.begin()) - 1;
  }

  // By insertion, which is quick where nothing is far from its place.
  static void sort_few(std::vector<double>& values) {
    for (std::size_t i = 1; i < values.size(); ++i) {
      const double value = values[i];
      std::size_t at = i;
      for (; at > 0 && values[at - 1] > value; --at) values[at] = values[at - 1];
      values[at] = value;
    }
  }

  const std::vector<double>& values_;
  double least_;
  double most_;
  double per_width_;
  std::vector<std::size_t> begin_;  // how many values lie before each bucket
};

}  // namespace treadwater::water
