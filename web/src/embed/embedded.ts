// On somebody else's page there is just one sheet: no ways in, nothing saved, no other sheets.
export const embedded = parent !== self;
