// A bound and the words for it are one value: words that are no number with a known unit are none.
#include "core/sheets/field.hpp"

using namespace treadwater;

#ifdef SHOULD_FAIL
constexpr sheets::Bound most("8000 stone");
#else
constexpr sheets::Bound most("8000 kg (17 600 lb)");
#endif
static_assert(most.stored == 8000.0);
