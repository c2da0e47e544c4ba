// What a field of pressures says is no length.
#include "core/sheets/form_reader.hpp"
#include "core/sheets/tyre_check/fields.hpp"

using namespace treadwater;
namespace form = treadwater::sheets::tyre_check;

#ifdef SHOULD_FAIL
std::optional<Length> use(sheets::FormReader& reader) { return reader.read(form::pressure); }
#else
std::optional<Length> use(sheets::FormReader& reader) { return reader.read(form::tread); }
#endif
