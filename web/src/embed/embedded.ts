// Within somebody else's page there is one sheet and no more: no ways in, nothing kept, no other sheets.
export const embedded = parent !== self;
