// No code: the headers precompiled for every folder of mobile/ need a target of their own.
