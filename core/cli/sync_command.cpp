#include "core/cli/crew_commands.h"

#include "core/base/whole_file.h"
#include "core/cli/file_contents.h"
#include "core/cli/json_input.h"
#include "core/store/crew_repository.h"
#include "core/sync/bundle_of_crew.h"
#include "core/sync/bundle_storage.h"
#include "core/sync/secret_file.h"
#include "core/sync/share.h"
#include "core/sync/sync_words.h"
#include "core/usecase/keep_limits.h"

#include <algorithm>
#include <iostream>

namespace lidlark::cli {

namespace {

using Json = nlohmann::ordered_json;

std::string personOf(Desk &desk, const std::string &box, const DeviceId &device)
{
    const auto crew = store::CrewRepository(desk.database()).crewOf(box);
    const crew::Member *member = crew ? crew->member(device) : nullptr;
    return member != nullptr ? member->person : std::string();
}

Json reportOf(Desk &desk, const std::string &box, const sync::Exchanged &exchanged)
{
    Json findings = Json::array(); // of several lanes alike: said once
    for (const sync::Finding &finding : exchanged.findings) {
        const std::string sentence =
            wording::fill(sync::sentenceFor(finding, personOf(desk, box, finding.device)));
        if (std::find(findings.begin(), findings.end(), sentence) == findings.end())
            findings.push_back(sentence);
    }
    Json report{{"box", box},
                {"received", exchanged.received},
                {"shared", exchanged.shared},
                {"waiting", exchanged.waiting},
                {"findings", findings}};
    if (exchanged.trouble)
        report["trouble"] = wording::fill(sync::sentenceFor(*exchanged.trouble));
    if (exchanged.copied)
        report["trouble"] = wording::fill(sync::copiedSentence());
    if (exchanged.out)
        report["trouble"] = wording::fill(sync::outSentence());
    return report;
}

int print(Desk &desk, const std::map<std::string, sync::Exchanged> &boxes)
{
    Json all = Json::array();
    bool well = true;
    for (const auto &[box, exchanged] : boxes) {
        Json report = reportOf(desk, box, exchanged);
        if (report.contains("trouble"))
            std::cerr << report["trouble"].get<std::string>() << '\n';
        for (const Json &finding : report["findings"])
            std::cerr << finding.get<std::string>() << '\n';
        well = well && !report.contains("trouble") && report["findings"].empty();
        all.push_back(std::move(report));
    }
    std::cout << Json{{"boxes", all}}.dump(2) << '\n';
    return well ? allWell : problemInData;
}

int handOver(Desk &desk, const SyncOptions &options, sync::Post &post)
{
    const auto box = crewAsked(desk, options.child, options.clinic);
    const auto bundle = box ? sync::bundleOfCrew(post, *box) : Result<sync::Bundle>(box.error());
    if (!bundle)
        return fail(bundle.error());
    const auto bytes = sync::bundleOf(*bundle);
    if (!bytes)
        return fail({ErrorCode::Invalid, "--hand-over: too much for one file"});
    if (writeWholeFile(options.handOver, *bytes))
        return fail({ErrorCode::Unwritable, options.handOver});
    std::cout << Json{{"file", options.handOver}, {"segments", bundle->size()}}.dump(2) << '\n';
    return allWell;
}

int takeIn(Desk &desk, const SyncOptions &options, sync::Post &post)
{
    const auto box = crewAsked(desk, options.child, options.clinic);
    if (!box)
        return fail(box.error());
    const auto bytes = contentsOf(options.takeIn);
    if (!bytes)
        return fail({ErrorCode::NotFound, options.takeIn});
    auto bundle = sync::bundleFrom(*bytes);
    if (const auto *fault = std::get_if<sync::BundleFault>(&bundle))
        return failWith(sync::sentenceFor(*fault));
    sync::BundleStorage storage(std::get<sync::Bundle>(std::move(bundle)));
    const auto exchanged = sync::takeInByHand(post, *box, storage);
    if (!exchanged)
        return fail(exchanged.error());
    return print(desk, {{*box, *exchanged}});
}

} // namespace

int runSync(const Options &options, const SyncOptions &sync)
{
    auto desk = Desk::open(options);
    if (!desk)
        return fail(desk.error());
    usecase::Workplace &place = (*desk)->workplace();
    sync::SecretFile keeper(secretsBeside(options.store));
    auto opened = sync::openPost(place.database, place.clock, place.entropy, keeper);
    if (!opened)
        return fail(opened.error());
    if (const Outcome kept = usecase::keepLimits(place); !kept)
        return fail(kept.error());
    if (!sync.handOver.empty() || !sync.takeIn.empty()) {
        if (const auto sentence = sync::sentenceFor(opened->match))
            return failWith(*sentence);
        return sync.takeIn.empty() ? handOver(**desk, sync, opened->post)
                                   : takeIn(**desk, sync, opened->post);
    }
    auto storage = storageAt(sync.place);
    if (!storage)
        return fail(storage.error());
    const auto shared = sync::shareAll(opened->post, opened->match, keeper, **storage);
    if (!shared)
        return fail(shared.error());
    if (const auto sentence = sync::sentenceFor(shared->match))
        return failWith(*sentence);
    return print(**desk, shared->boxes);
}

} // namespace lidlark::cli
