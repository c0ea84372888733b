#include "tests/arrows/arrow_judge.h"

#include "tests/arrows/own_file.h"

#include <algorithm>
#include <cctype>
#include <filesystem>
#include <optional>
#include <regex>

namespace lidlark::arrows {

namespace {

using Form = Mention::Form;

/// A header of a library that only some places may name.
struct Keeper {
    std::string_view beginning;           ///< Of the header's name.
    std::vector<std::string_view> places; ///< Beginnings of the paths that may name it.
};

const std::vector<Keeper> &keepers()
{
    static const std::vector<Keeper> all{
        // tests/bench sets the store beside bare SQLite (design.md 12).
        {"sqlite3", {"core/store/", "tests/core/store/", "tests/bench/"}},
        // The tests of sealing and of letters are judged by the library itself.
        {"sodium",
         {"core/base/digest.cpp", "core/base/entropy.cpp", "core/crypto/", "core/sync/",
          "tests/core/crypto/"}},
        {"yaml-cpp/", {"core/base/"}},
        {"boost/", {"core/workbench/box_cost.cpp", "tests/"}},
        {"curl/", {"core/sync/http_client.cpp", "core/sync/web_url.cpp"}},
        {"pugixml", {"core/sync/webdav_listing.cpp"}},
        {"CLI/", {"core/cli/"}},
        {"glpk", {"tests/"}},
        {"qt6keychain/", {"mobile/platform/system_keychain.cpp"}},
        {"qrencode", {"mobile/platform/qr/"}},
        {"ZXing/", {"mobile/platform/qr/", "tests/mobile/platform/"}},
    };
    return all;
}

bool isQtHeader(const std::string &name)
{
    static const std::regex form(R"(^(Qt?[A-Z]\w*(/.*)?|q[a-z0-9_]+\.h)$)");
    return std::regex_match(name, form);
}

/// What is wrong with naming the library header @p name in @p path.
std::optional<std::string> wrongLibrary(const std::string &path, const std::string &name)
{
    if (path.starts_with("core/") && isQtHeader(name))
        return "the core knows no Qt, but this names <" + name + ">";
    for (const Keeper &keeper : keepers()) {
        const auto mayHere = [&path](std::string_view place) { return path.starts_with(place); };
        if (name.starts_with(keeper.beginning) && std::ranges::none_of(keeper.places, mayHere))
            return "<" + name + "> is named outside the folder that keeps it";
    }
    return std::nullopt;
}

/// "Lidlark.PutBack" is the folder mobile/putback; a module without that prefix is a library's.
std::optional<std::string> folderOfModule(const std::string &module)
{
    static constexpr std::string_view prefix = "Lidlark.";
    if (!module.starts_with(prefix))
        return std::nullopt;
    std::string name = module.substr(prefix.size());
    std::ranges::transform(name, name.begin(), [](unsigned char letter) {
        return static_cast<char>(std::tolower(letter));
    });
    return "mobile/" + name;
}

bool isMadeByTheBuild(const std::string &name)
{
    return name.ends_with(".moc") ||
           std::filesystem::path(name).filename().string().starts_with("moc_");
}

std::optional<std::string> wrongArrow(const std::string &path, const std::string &to,
                                      const ArrowTable &table)
{
    const std::string from = folderOf(path);
    const std::string folder = folderOf(to);
    if (mayName(table, from, folder))
        return std::nullopt;
    return from + " may not name " + folder + " (" + to + ")";
}

std::optional<std::string> wrongInclude(const std::string &path, const Mention &mention,
                                        const std::set<std::string> &known, const ArrowTable &table)
{
    if (const auto own = ownFile(path, mention.target, known))
        return wrongArrow(path, *own, table);
    if (auto library = wrongLibrary(path, mention.target))
        return library;
    if (mention.form == Form::Angled || isMadeByTheBuild(mention.target))
        return std::nullopt;
    return "\"" + mention.target + "\" is no file of the project";
}

std::optional<std::string> wrongMention(const std::string &path, const Mention &mention,
                                        const std::set<std::string> &known, const ArrowTable &table)
{
    switch (mention.form) {
    case Form::Quoted:
    case Form::Angled:
        return wrongInclude(path, mention, known, table);
    case Form::Path: {
        const auto own = ownFile(path, mention.target, known);
        return own ? wrongArrow(path, *own, table)
                   : "\"" + mention.target + "\" is no file of the project";
    }
    case Form::Module: {
        const auto folder = folderOfModule(mention.target);
        return folder ? wrongArrow(path, *folder + "/", table) : std::nullopt;
    }
    case Form::Unclear:
        break;
    }
    return "an #include that names no file: " + mention.target;
}

} // namespace

std::vector<Complaint> wrongArrows(const SourceFile &file, const std::set<std::string> &known,
                                   const ArrowTable &table)
{
    std::vector<Complaint> complaints;
    for (const Mention &mention : mentionsIn(file)) {
        if (const auto reason = wrongMention(file.path, mention, known, table))
            complaints.push_back({file.path, mention.line, *reason});
    }
    return complaints;
}

} // namespace lidlark::arrows
