#include "core/usecase/own_entries.h"

#include "core/catalogue/write_entry.h"
#include "core/store/box_repository.h"
#include "core/store/recording.h"
#include "core/usecase/clinic_word.h"
#include "core/usecase/family.h"

#include <algorithm>
#include <charconv>

namespace lidlark::usecase {

namespace {

using catalogue::Catalogue;
using catalogue::OwnFiles;
using catalogue::SourceFile;
using workbench::OwnKept;
using workbench::OwnSort;

SourceFile fileOf(OwnSort sort, const std::string &id, const std::string &text)
{
    return {(sort == OwnSort::Item ? "items/" : "activities/") + id + ".yaml", text};
}

OwnFiles justThis(OwnSort sort, const std::string &id, const std::string &text)
{
    OwnFiles files;
    (sort == OwnSort::Item ? files.items : files.activities).push_back(fileOf(sort, id, text));
    return files;
}

/// In place of files of the same name; what is withdrawn from a box stays so.
void putOver(OwnFiles &files, const OwnFiles &changed)
{
    const auto put = [](std::vector<SourceFile> &list, const std::vector<SourceFile> &over) {
        std::erase_if(list, [&over](const SourceFile &old) {
            return std::ranges::find(over, old.name, &SourceFile::name) != over.end();
        });
        list.insert(list.begin(), over.begin(), over.end()); // read first, whatever else is there
    };
    put(files.items, changed.items);
    put(files.activities, changed.activities);
}

/// All that is kept, drafts too: what is written now may be played with it, and what is sent takes
/// its things along as they are kept.
Outcome layDeskOver(Workplace &workplace, OwnFiles &files)
{
    const auto kept = ownKept(workplace);
    if (!kept)
        return kept.error();
    OwnFiles desk;
    for (const OwnKept &one : *kept)
        (one.sort == OwnSort::Item ? desk.items : desk.activities)
            .push_back(fileOf(one.sort, one.id, one.text));
    putOver(files, desk);
    return Done{};
}

/// The text with another number after its `version:`.
std::string withVersion(const std::string &text, int version)
{
    constexpr std::string_view name = "version: ";
    const std::size_t at = text.starts_with(name) ? 0 : text.find("\n" + std::string(name)) + 1;
    if (at == 0 && !text.starts_with(name))
        return text;
    const std::size_t end = text.find('\n', at);
    return text.substr(0, at) + std::string(name) + std::to_string(version) +
           (end == std::string::npos ? "" : text.substr(end));
}

/// Raised above every version under which a box knows another text.
Result<std::string> raised(Workplace &workplace, const OwnKept &kept)
{
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!boxes)
        return boxes.error();
    const SourceFile file = fileOf(kept.sort, kept.id, kept.text);
    int version = kept.sort == OwnSort::Item ? catalogue::itemDraft(file).version
                                             : catalogue::activityDraft(file).version;
    bool taken = false;
    for (const store::BoxRow &box : *boxes) {
        const auto entries = ownEntriesOf(workplace, box.id);
        if (!entries)
            return entries.error();
        for (const workbench::OwnEntry &entry : *entries) {
            const bool other = entry.sort == kept.sort && entry.id == kept.id &&
                               !entry.known.text.empty() && entry.known.text != kept.text;
            if (!other || entry.known.version < version)
                continue;
            version = entry.known.version;
            taken = true;
        }
    }
    return taken ? withVersion(kept.text, version + 1) : kept.text;
}

Result<OwnFindings> publish(Workplace &therapist, const Catalogue &builtIn, OwnSort sort,
                            const std::string &id)
{
    if (const Outcome may = mayKeepClinic(therapist); !may)
        return may.error();
    const auto kept = ownKept(therapist, sort, id);
    if (!kept)
        return kept.error();
    if (!*kept)
        return Error{ErrorCode::NotFound, id};
    auto findings = findingsIn(therapist, builtIn, sort, id, (*kept)->text);
    if (!findings || !findings->clean())
        return findings;
    auto text = raised(therapist, **kept);
    if (!text)
        return text.error();
    const Outcome said = sayInClinic(
        therapist, sort == OwnSort::Item ? journal::Kind::OwnItem : journal::Kind::OwnActivity,
        workbench::fieldsOf(OwnKept{id, sort, *std::move(text), true}));
    return said ? findings : said.error();
}

/// What the gate says of it in the box of @p family.
void askGate(const Family &family, const Catalogue &edited, const ActivityId &id, Day today,
             OwnFit &fit)
{
    const safety::Gated gated = gatedFor(family, edited, safety::Room{}, today);
    fit.fits = std::ranges::any_of(
        gated.admitted, [&id](const safety::Admitted &entry) { return entry.activity().id == id; });
    for (const safety::HeldBack &held : gated.heldBack) {
        if (held.activity->id == id)
            fit.reasons = held.reasons;
    }
}

/// A draft is offered to nobody, however sound it is.
void checkStatus(const catalogue::Activity &activity, const std::string &file,
                 OwnFindings &findings)
{
    if (activity.status == catalogue::Status::Draft ||
        activity.status == catalogue::Status::Withdrawn)
        findings.refused.push_back(
            {file, 0, "status", "must be awaiting-review or reviewed before it goes to a box"});
}

} // namespace

Result<OwnFindings> findingsIn(Workplace &workplace, const Catalogue &builtIn, OwnSort sort,
                               const std::string &id, const std::string &text)
{
    auto files = ownFilesOf(workplace, {});
    if (!files)
        return files.error();
    if (const Outcome laid = layDeskOver(workplace, *files); !laid)
        return laid.error();
    putOver(*files, justThis(sort, id, text));
    files->withdrawn.erase({id}); // of another box, or taken back: none of this text's doing
    const Catalogue edited = catalogue::catalogueWith(builtIn, *files);
    const std::string name = fileOf(sort, id, text).name;
    OwnFindings findings;
    std::ranges::copy_if(
        edited.problems(), std::back_inserter(findings.refused),
        [&name](const catalogue::Problem &problem) { return problem.file == name; });
    const catalogue::Activity *activity =
        sort == OwnSort::Activity ? edited.activity({id}) : nullptr;
    if (activity != nullptr) {
        findings.lint = catalogue::lint(*activity, edited);
        checkStatus(*activity, name, findings);
    }
    return findings;
}

Result<OwnFindings> publishOwnActivity(Workplace &therapist, const Catalogue &builtIn,
                                       const std::string &id)
{
    return publish(therapist, builtIn, OwnSort::Activity, id);
}

Result<OwnFindings> publishOwnItem(Workplace &therapist, const Catalogue &builtIn,
                                   const std::string &id)
{
    return publish(therapist, builtIn, OwnSort::Item, id);
}

Result<std::vector<BoxRecheck>> whoIsAffected(Workplace &workplace, const Catalogue &builtIn,
                                              const OwnFiles &changed)
{
    const auto today = store::todayOf(workplace.clock);
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!today || !boxes)
        return today ? boxes.error() : today.error();
    std::vector<BoxRecheck> rechecks;
    for (const store::BoxRow &box : *boxes) {
        const auto family = loadFamily(workplace, box.alias);
        auto files = ownFilesOf(workplace, box.id);
        if (!family || !files)
            return family ? files.error() : family.error();
        const Catalogue before = catalogue::catalogueWith(builtIn, *files);
        putOver(*files, changed);
        rechecks.push_back(
            recheckBox(*family, before, catalogue::catalogueWith(builtIn, *files), today->day));
    }
    return rechecks;
}

Result<std::vector<OwnFit>> fitOfOwn(Workplace &workplace, const Catalogue &builtIn,
                                     const std::string &id, const std::string &text)
{
    const auto today = store::todayOf(workplace.clock);
    const auto boxes = store::BoxRepository(workplace.database).boxes();
    if (!today || !boxes)
        return today ? boxes.error() : today.error();
    std::vector<OwnFit> fits;
    for (const store::BoxRow &box : *boxes) {
        const auto family = loadFamily(workplace, box.alias);
        const auto entries = ownEntriesOf(workplace, box.id);
        auto files = ownFilesOf(workplace, box.id);
        if (!family || !entries || !files)
            return !family ? family.error() : !entries ? entries.error() : files.error();
        OwnFit fit{box.alias, false, {}, std::nullopt};
        for (const workbench::OwnEntry &entry : *entries) {
            if (entry.sort == OwnSort::Activity && entry.id == id)
                fit.inBox = entry;
        }
        if (const Outcome laid = layDeskOver(workplace, *files); !laid)
            return laid.error();
        putOver(*files, justThis(OwnSort::Activity, id, text));
        files->withdrawn.erase({id});
        const Catalogue edited = catalogue::catalogueWith(builtIn, *files);
        if (edited.activity({id}) == nullptr)
            return std::vector<OwnFit>();
        askGate(*family, edited, {id}, today->day, fit);
        fits.push_back(std::move(fit));
    }
    return fits;
}

} // namespace lidlark::usecase
