#include "core/words/problem.hpp"

#include "core/quantity/write.hpp"
#include "core/words/say.hpp"

namespace treadwater {
namespace {

struct DimensionWords {
  Phrase noun;
  Phrase units;  // to suggest
};

DimensionWords words_of(Dimension d) {
  switch (d) {
    case Dimension::pressure:
      return {Phrase("a pressure"), Phrase("kPa, bar or psi")};
    case Dimension::mass:
      return {Phrase("a mass"), Phrase("kg or lb")};
    case Dimension::length:
      return {Phrase("a length"), Phrase("mm or in")};
    case Dimension::speed:
      return {Phrase("a speed"), Phrase("km/h or mph")};
    case Dimension::temperature:
      return {Phrase("a temperature"), Phrase("# or #")};
    case Dimension::force:
      return {Phrase("a force"), Phrase("N")};
    case Dimension::rain:
      return {Phrase("a rate of rain"), Phrase("mm/h or in/h")};
    case Dimension::time:
      return {Phrase("a time"), Phrase("s, min or h")};
    case Dimension::number:
      return {Phrase("a number"), Phrase("no unit")};
  }
  return {Phrase("a quantity"), Phrase("its unit")};
}

// Symbols are the same in every language; a year is a word.
std::string bound_in_words(std::string_view bound) {
  return bound == "1 year" ? say("1 year") : quantity_in_words(bound);
}

std::string units_of(Dimension d) {
  constexpr std::string_view celsius = "°C", fahrenheit = "°F";
  return say(words_of(d).units, {celsius, fahrenheit});
}

}  // namespace

std::string say_missing(Phrase label, std::string_view example) {
  return say("# is missing. Something like # would do.", {label, quantity_in_words(example)});
}

std::string say(const ReadProblem& problem, Phrase label, const QuantityRequest& request) {
  const std::string_view code = problem.code;
  const std::string example = quantity_in_words(request.example);
  const std::string quoted = in_quotes(problem.written);
  const auto with = [&](Phrase sentence, const std::string& more) {
    return say(sentence, {label, quoted, more, example});
  };
  const std::string range =
      say("Anything from # to # would do.",
          {bound_in_words(request.least_text), bound_in_words(request.most_text)});
  if (code == "missing") return say_missing(label, request.example);
  if (code == "too_long")
    return with(Phrase("#: # is # characters long. One number and its unit would do, such as #."),
                std::to_string(problem.length));
  if (code == "no_number")
    return with(Phrase("#: # has no number that can be read. A number and its unit would do, such "
                       "as #."),
                example);
  if (code == "bad_fraction") return with(Phrase("#: # divides by nothing."), "");
  if (code == "two_numbers")
    return with(problem.divides_twice
                    ? Phrase("#: # divides twice. Something like # would do.")
                    : Phrase("#: # holds more than one number. Give one, such as #."),
                example);
  if (code == "too_large")
    return with(Phrase("#: # is larger than any number this can use. #"), range);
  if (code == "unit_needed")
    return with(Phrase("#: # is a fraction without its unit. Add it, such as #."), example);
  if (code == "unknown_unit")
    return say("#: #: the unit # is not known here. Use #, such as #.",
               {label, quoted, in_quotes(problem.unit), units_of(request.dimension), example});
  if (code == "wrong_dimension")
    return say("#: # is #, and # is asked for: use #, such as #.",
               {label, quoted, words_of(problem.dimension).noun, words_of(request.dimension).noun,
                units_of(request.dimension), example});
  if (code == "thousands")
    return say("#: # can be read as # or as #. Write the one that is meant so.",
               {label, quoted, trimmed(problem.number, 3), trimmed(1000.0 * problem.number, 0)});
  if (code == "below_range")
    return with(problem.number < 0 && request.dimension != Dimension::temperature
                    ? Phrase("#: # is below zero. #")
                    : Phrase("#: # is less than this can use. #"),
                range);
  return with(Phrase("#: # is more than this can use. #"),
              sentences({range, problem.meant_psi
                                    ? say("Did you mean #?", {trimmed(problem.number, 1) + " psi"})
                                    : std::string()}));
}

}  // namespace treadwater
