#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace lidlark::mutation {

/// One line of mutants.txt, written by lidlark-mutate.
struct ListedMutant {
    int number = 0;
    std::string file;
    int line = 0;
    std::string what;
    std::string lineText;

    /// "core/safety/room.cpp:45: 37 for 36   [constexpr int underThreeMonths = 36;]".
    [[nodiscard]] std::string text() const;
};

/// @throws std::runtime_error for a line that is no mutant.
std::vector<ListedMutant> mutantsFrom(std::string_view list);

/// A mutant that no test can tell from the gate, with the reason why.
struct Equivalent {
    std::string file;
    std::string what;
    std::string lineText;
    std::string why;

    [[nodiscard]] bool names(const ListedMutant &mutant) const
    {
        return file == mutant.file && what == mutant.what && lineText == mutant.lineText;
    }
};

/// Reads equivalent.txt: entries of four lines (file, what was done, the line itself, "why: " and a
/// sentence), parted by empty lines; lines that begin with "#" say something about the list.
/// @throws std::runtime_error for an entry of another form.
std::vector<Equivalent> equivalentsFrom(std::string_view list);

} // namespace lidlark::mutation
