#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace lidlark::store {

/// Where the families of one phone lie: the first store, which also keeps what belongs to the phone
/// itself, and beside it a folder "<first>.families" with a store for each further family. What
/// lies in the folder is the truth; nothing else lists it.
class FamilyFolder
{
public:
    explicit FamilyFolder(std::string first) : m_first(std::move(first)) {}

    [[nodiscard]] const std::string &first() const { return m_first; }
    /// The further families' files, in the order in which they were added.
    [[nodiscard]] std::vector<std::string> further() const;
    /// The first one and the further ones.
    [[nodiscard]] std::vector<std::string> all() const;
    /// Those taken off the phone and not yet forgotten.
    [[nodiscard]] std::vector<std::string> takenOff() const;

    /// A file for a family that is being set up; nobody sees it before it is `kept`.
    Result<std::string> making();
    /// @param made closed, from `making`. @returns the family's file.
    Result<std::string> keep(const std::string &made);
    /// Moves a closed store aside. @returns where it lies now.
    Result<std::string> takeOff(const std::string &file);
    /// @returns the family's file again.
    Result<std::string> bringBack(const std::string &takenOff);
    /// What was taken off goes for good, with all copies, and so does what was never finished.
    void forgetTakenOff();

private:
    [[nodiscard]] std::vector<std::string> endingWith(const std::string &suffix) const;
    [[nodiscard]] std::string folder() const { return m_first + ".families"; }
    [[nodiscard]] std::string fresh() const;
    std::string m_first;
};

} // namespace lidlark::store
