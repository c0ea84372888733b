#include "core/cli/options.h"

#include "core/cli/file_contents.h"
#include "core/store/refold.h"
#include "core/usecase/own_catalogue.h"
#include "core/wording/error_words.h"

#include <chrono>
#include <filesystem>
#include <iostream>

namespace lidlark::cli {

namespace {

namespace fs = std::filesystem;

class SystemClock final : public Clock
{
public:
    [[nodiscard]] std::int64_t nowMs() const override
    {
        using namespace std::chrono;
        return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
    }
    /// The command line writes UTC days unless --clock says otherwise.
    [[nodiscard]] int offsetMinutes() const override { return 0; }
};

std::vector<catalogue::SourceFile> filesIn(const fs::path &folder, const std::string &name)
{
    std::vector<catalogue::SourceFile> files;
    std::error_code ignored; // a missing folder is an empty catalogue, reported by its emptiness
    for (const auto &entry : fs::directory_iterator(folder / name, ignored)) {
        if (entry.path().extension() != ".yaml")
            continue;
        files.push_back(
            {name + "/" + entry.path().filename().string(), contentsOf(entry.path()).value_or("")});
    }
    return files;
}

fs::path folderOf(const Options &options)
{
    return options.catalogue.empty() ? LIDLARK_CATALOGUE_DIR : options.catalogue;
}

void putInPlace(std::vector<catalogue::SourceFile> &files, catalogue::SourceFile file)
{
    for (catalogue::SourceFile &old : files) {
        if (old.name == file.name) {
            old = std::move(file);
            return;
        }
    }
    files.push_back(std::move(file));
}

/// @param isActivity of a file's path; what is none is an item.
template <class IsActivity>
Result<catalogue::Catalogue>
withFiles(const Options &options, const std::vector<std::string> &files, IsActivity &&isActivity)
{
    auto items = filesIn(folderOf(options), "items");
    auto activities = filesIn(folderOf(options), "activities");
    for (const std::string &name : files) {
        const fs::path path(name);
        const std::optional<std::string> text = contentsOf(path);
        if (!text || text->empty())
            return Error{ErrorCode::NotFound, name};
        const bool activity = isActivity(path);
        putInPlace(activity ? activities : items,
                   {(activity ? "activities/" : "items/") + path.filename().string(), *text});
    }
    return catalogue::load(items, activities);
}

} // namespace

Result<catalogue::Catalogue> editedCatalogue(const Options &options,
                                             const std::vector<std::string> &files)
{
    return withFiles(options, files, [](const fs::path &path) {
        return path.parent_path().filename() == "activities";
    });
}

Result<catalogue::Catalogue> catalogueWithActivities(const Options &options,
                                                     const std::vector<std::string> &files)
{
    return withFiles(options, files, [](const fs::path &) { return true; });
}

catalogue::Catalogue readCatalogue(const Options &options)
{
    const fs::path folder = folderOf(options);
    catalogue::Catalogue loaded =
        catalogue::load(filesIn(folder, "items"), filesIn(folder, "activities"));
    for (const catalogue::Problem &problem : loaded.problems())
        std::cerr << problem.text() << '\n';
    if (loaded.activities().empty())
        std::cerr << "No activities in " << folder.string() << ".\n";
    return loaded;
}

Result<std::unique_ptr<Clock>> clockFrom(const Options &options)
{
    if (options.clock.empty())
        return std::unique_ptr<Clock>(std::make_unique<SystemClock>());
    const auto ms = msFromText(options.clock);
    if (!ms)
        return Error{ErrorCode::Invalid, "--clock: not an instant such as 2027-01-11T18:25:00Z"};
    return std::unique_ptr<Clock>(std::make_unique<StillClock>(*ms));
}

Result<std::unique_ptr<Desk>> Desk::open(const Options &options, const std::string &child)
{
    std::unique_ptr<Desk> desk(new Desk);
    Result<std::unique_ptr<Clock>> clock = clockFrom(options);
    if (!clock)
        return clock.error();
    if (options.store.empty())
        return Error{ErrorCode::Invalid, "--store: which store? Give a file"};
    Result<store::Database> database = store::Database::openExisting(options.store);
    if (!database)
        return database.error();
    if (const Outcome folded = store::refoldIfOld(*database); !folded)
        return folded.error();
    desk->m_clock = *std::move(clock);
    desk->m_database = std::make_unique<store::Database>(*std::move(database));
    const auto device = store::DeviceRepository(*desk->m_database).device();
    if (!device)
        return device.error();
    if (!*device)
        return Error{ErrorCode::NotFound, "a household in " + options.store};
    desk->m_catalogue = readCatalogue(options);
    desk->m_entropy = std::make_unique<SystemEntropy>();
    desk->m_workplace = std::make_unique<usecase::Workplace>(usecase::Workplace{
        *desk->m_database, desk->m_catalogue, *desk->m_clock, *desk->m_entropy, **device});
    if (const Outcome laid = desk->layOwnOver(child); !laid)
        return laid.error();
    return desk;
}

Outcome Desk::layOwnOver(const std::string &child)
{
    const auto own = usecase::ownFilesFor(*m_workplace, child);
    if (!own || own->empty())
        return own ? Outcome(Done{}) : own.error();
    m_withOwn = catalogue::catalogueWith(m_catalogue, *own);
    for (const catalogue::Problem &problem : m_withOwn->problems())
        std::cerr << problem.text() << '\n';
    const store::Device device = m_workplace->device;
    m_workplace = std::make_unique<usecase::Workplace>(
        usecase::Workplace{*m_database, *m_withOwn, *m_clock, *m_entropy, device});
    return Done{};
}

int fail(const Error &error)
{
    std::cerr << wording::fill(wording::sentenceFor(error)) << '\n';
    return problemInData;
}

int noAnswer(const std::string &reason)
{
    std::cerr << "No answer: " << reason << '\n';
    return problemInData;
}

} // namespace lidlark::cli
