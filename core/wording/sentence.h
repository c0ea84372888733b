#pragma once

#include <string>
#include <vector>

namespace lidlark::wording {

/// A sentence a person reads, once for all: English with %1 to %9 and what stands in their places.
/// The command line prints it; the app takes the English as the key of its translation.
struct Sentence {
    std::string english;
    std::vector<std::string> arguments;
    bool operator==(const Sentence &) const = default;
};

/// The sentence with its arguments in place. A "%1" inside an argument stays as it was typed.
std::string fill(const Sentence &sentence);

/// "one" to "twelve", then digits: counts read aloud.
std::string numberWord(int number);

/// The first letter as a capital.
std::string capital(std::string text);
/// The first letter small: a line that goes on inside another.
std::string uncapital(std::string text);

} // namespace lidlark::wording
