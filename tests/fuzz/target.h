#pragma once

#include <string_view>

namespace lidlark::fuzz {

/// Tells whoever runs a target that something it is promised does not hold: libFuzzer by a trap
/// (entry.cpp), the replay of the corpus by an exception (tst_fuzz_corpus.cpp).
[[noreturn]] void broken(const char *promise);

/// @param promise in words: "what is written is read again".
inline void must(bool holds, const char *promise)
{
    if (!holds)
        broken(promise);
}

// The targets. Each gives any bytes whatever to readers of what comes from outside the phone: they
// may refuse them, and nothing else; what they take, they must be able to write again.

/// A file of a storage as it lies there, and the compression inside it.
void segment(std::string_view bytes);
/// What a member who holds the key can have sealed: the first byte chooses the content.
void segmentInside(std::string_view bytes);
/// A file that was handed over.
void bundle(std::string_view bytes);
/// What is typed or pasted as a joining code, the words of a recovery sheet, a text in squares.
void joinCode(std::string_view bytes);
/// What lies in the room of a joining code or in the folder of a recovery sheet.
void letters(std::string_view bytes);
/// One line of a segment, and the readers of every kind's fields.
void event(std::string_view bytes);
/// Many events at once (made_events.h), folded in two orders.
void folds(std::string_view bytes);
/// Hexadecimal digits, percent signs, days, instants, lanes.
void smallTexts(std::string_view bytes);
/// YAML, and the packed form of it.
void tree(std::string_view bytes);
/// An activity, an item or a translation: the first byte chooses which.
void catalogue(std::string_view bytes);
/// A file of drawings, and path data.
void drawing(std::string_view bytes);
/// A server's answer to a PROPFIND.
void listing(std::string_view bytes);
/// The head of a server's answer, where it sends on to, and the address that is typed.
void http(std::string_view bytes);
/// A table that a person hands to the command line.
void csv(std::string_view bytes);
/// A build that a person hands to the command line, and the sheet of it.
void build(std::string_view bytes);

} // namespace lidlark::fuzz
