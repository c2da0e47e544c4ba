// The browser reads decimal numbers to the last bit, and it is there already: the C library's strtod,
// with its arithmetic of 128 bits, would be a twentieth of the first module (number.cpp).
mergeInto(LibraryManager.library, {
  number_at: function (text) {
    let digits = '';
    while (HEAPU8[text]) digits += String.fromCharCode(HEAPU8[text++]);
    return parseFloat(digits) || 0;
  },
});
