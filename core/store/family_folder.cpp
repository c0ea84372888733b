#include "core/store/family_folder.h"

#include <algorithm>
#include <charconv>
#include <filesystem>
#include <system_error>

namespace lidlark::store {

namespace {

namespace fs = std::filesystem;

constexpr auto kept = ".lidlark";
constexpr auto beingMade = ".lidlark.making";
constexpr auto aside = ".lidlark.taken-off";
constexpr auto namePrefix = "family-";

/// 3 for "family-3.lidlark"; 0 for a name that somebody else has given.
int numberOf(const std::string &file)
{
    const std::string name = fs::path(file).filename().string();
    int number = 0;
    const std::size_t start = std::string(namePrefix).size();
    if (name.starts_with(namePrefix))
        std::from_chars(name.data() + start, name.data() + name.size(), number);
    return number;
}

Result<std::string> move(const std::string &from, const std::string &to)
{
    std::error_code failed;
    fs::rename(from, to, failed);
    if (failed)
        return Error{ErrorCode::Unwritable, to};
    // A closed store has taken its log in. What another program left of one must not meet the next
    // store of that name.
    for (const char *log : {"-wal", "-shm"})
        fs::remove(from + log, failed);
    return to;
}

std::string withoutSuffix(const std::string &file, const std::string &suffix)
{
    return file.substr(0, file.size() - suffix.size());
}

/// The store and what SQLite and the migrations have laid beside it.
void removeWhole(const std::string &file)
{
    const fs::path store(file);
    std::error_code failed;
    std::vector<fs::path> found;
    for (fs::directory_iterator at(store.parent_path(), failed), end; !failed && at != end;
         at.increment(failed)) {
        const std::string name = at->path().filename().string();
        const std::string own = store.filename().string();
        if (name == own || name.starts_with(own + "-") || name.starts_with(own + ".before-"))
            found.push_back(at->path());
    }
    for (const fs::path &path : found)
        fs::remove(path, failed);
}

} // namespace

std::vector<std::string> FamilyFolder::endingWith(const std::string &suffix) const
{
    std::vector<std::string> files;
    std::error_code failed;
    for (fs::directory_iterator at(folder(), failed), end; !failed && at != end;
         at.increment(failed)) {
        if (at->path().filename().string().ends_with(suffix))
            files.push_back(at->path().string());
    }
    std::ranges::sort(files, [](const std::string &left, const std::string &right) {
        return std::pair(numberOf(left), left) < std::pair(numberOf(right), right);
    });
    return files;
}

std::vector<std::string> FamilyFolder::further() const
{
    return endingWith(kept);
}

std::vector<std::string> FamilyFolder::all() const
{
    std::vector<std::string> files = further();
    files.insert(files.begin(), m_first);
    return files;
}

std::vector<std::string> FamilyFolder::takenOff() const
{
    return endingWith(aside);
}

/// The path of the next family, without its ending. A number is not given twice while its file is
/// still there.
std::string FamilyFolder::fresh() const
{
    int highest = 1; // the first store is number one
    for (const auto *suffix : {kept, beingMade, aside}) {
        for (const std::string &file : endingWith(suffix))
            highest = std::max(highest, numberOf(file));
    }
    return (fs::path(folder()) / (namePrefix + std::to_string(highest + 1))).string();
}

Result<std::string> FamilyFolder::making()
{
    std::error_code failed;
    fs::create_directories(folder(), failed);
    if (failed)
        return Error{ErrorCode::Unwritable, folder()};
    return fresh() + beingMade;
}

Result<std::string> FamilyFolder::keep(const std::string &made)
{
    return move(made, withoutSuffix(made, beingMade) + kept);
}

Result<std::string> FamilyFolder::takeOff(const std::string &file)
{
    if (file != m_first)
        return move(file, withoutSuffix(file, kept) + aside);
    const Result<std::string> made = making();
    return made ? move(file, withoutSuffix(*made, beingMade) + aside) : made;
}

Result<std::string> FamilyFolder::bringBack(const std::string &takenOff)
{
    return move(takenOff, withoutSuffix(takenOff, aside) + kept);
}

void FamilyFolder::forgetTakenOff()
{
    for (const auto *suffix : {beingMade, aside}) {
        for (const std::string &file : endingWith(suffix))
            removeWhole(file);
    }
}

} // namespace lidlark::store
