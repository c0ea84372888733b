// No code: the headers precompiled for every test need a target of their own.
