#include "core/sync/tell_once.h"

#include "core/store/device_repository.h"

#include <algorithm>

namespace lidlark::sync {

namespace {

std::string toldKey(const std::string &box, const Finding &finding)
{
    return "sync.told." + box + "." + toText(finding.lane) + "." + finding.device.value;
}

bool isFormerSelf(const CrewBook &book, const DeviceId &device)
{
    const auto present = book.crew().present();
    return std::ranges::any_of(
        present, [&device](const crew::Member &member) { return member.was == device; });
}

/// Whether it is new; and keeps that it was told.
Result<bool> isNew(store::DeviceRepository &local, const std::string &box, const Finding &finding)
{
    const std::string key = toldKey(box, finding);
    const std::string sequence = std::to_string(finding.sequence);
    const auto told = local.localState(key);
    if (!told)
        return told.error();
    if (*told == sequence)
        return false;
    if (const Outcome kept = local.setLocalState(key, sequence); !kept)
        return kept.error();
    return true;
}

} // namespace

Outcome tellOnce(Post &post, const CrewBook &book, Findings &findings)
{
    store::DeviceRepository local(post.database);
    Findings told;
    for (const Finding &finding : findings) {
        const bool ofRemoved = finding.kind == FindingKind::Intruder;
        if (ofRemoved && isFormerSelf(book, finding.device))
            continue;
        const auto fresh = ofRemoved ? isNew(local, book.box(), finding) : Result<bool>(true);
        if (!fresh)
            return fresh.error();
        if (*fresh)
            told.push_back(finding);
    }
    findings = std::move(told);
    return Done{};
}

} // namespace lidlark::sync
