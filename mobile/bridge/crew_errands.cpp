#include "mobile/bridge/crew_errands.h"

#include "core/crew/clinic_crew.h"
#include "core/store/box_repository.h"
#include "core/store/crew_repository.h"
#include "core/sync/come_anew.h"
#include "core/sync/consent.h"
#include "core/sync/found_crew.h"
#include "core/sync/home_asked_into.h"
#include "core/sync/leave.h"
#include "core/sync/let_in.h"
#include "core/sync/sharing_state.h"
#include "core/sync/sync_words.h"

namespace lidlark::mobile {

namespace {

std::string personOf(CrewDesk &desk, const std::string &box, const DeviceId &device)
{
    const auto crew = store::CrewRepository(desk.database()).crewOf(box);
    const crew::Member *member = crew ? crew->member(device) : nullptr;
    return member != nullptr ? member->person : std::string();
}

void addTo(ShareReport &report, CrewDesk &desk, const std::string &box,
           const sync::Exchanged &exchanged)
{
    report.received += exchanged.received;
    if (exchanged.trouble)
        report.trouble = sync::sentenceFor(*exchanged.trouble);
    report.setBack = report.setBack || exchanged.copied;
    if (exchanged.copied)
        report.trouble = sync::copiedSentence();
    if (exchanged.out)
        report.trouble = sync::outSentence();
    for (const sync::Finding &finding : exchanged.findings)
        report.findings.push_back(sync::sentenceFor(finding, personOf(desk, box, finding.device)));
}

sync::Storage &storageIn(const StorageOrWhy &found)
{
    return *std::get<std::unique_ptr<sync::Storage>>(found);
}

Outcome checkConsent(CrewDesk &desk)
{
    const auto consent = sync::consentIn(desk.database());
    if (!consent)
        return consent.error();
    return *consent ? Outcome(Done{}) : Outcome(Error{ErrorCode::NotAllowed, "member"});
}

/// What was done stays done where it cannot be told to the others now: it is told later.
Result<ShareReport> shareIfAgreed(CrewDesk &desk)
{
    auto report = checkConsent(desk) ? share(desk) : Result<ShareReport>(ShareReport{});
    if (report)
        return report;
    return ShareReport{sync::sentenceFor(sync::Trouble::Unreachable), {}, 0, false};
}

} // namespace

ShareReport reportOf(CrewDesk &desk, const std::string &box, const sync::Exchanged &exchanged)
{
    ShareReport report;
    addTo(report, desk, box, exchanged);
    return report;
}

Result<ShareReport> share(CrewDesk &desk)
{
    if (const Outcome agreed = checkConsent(desk); !agreed)
        return agreed.error();
    auto opened = sync::openPost(desk.database(), desk.clock(), desk.entropy(), desk.keeper());
    if (!opened)
        return opened.error();
    const auto found = desk.storage();
    if (!found)
        return found.error();
    if (const auto *why = std::get_if<wording::Sentence>(&*found))
        return ShareReport{*why, {}, 0, false};
    const auto shared =
        sync::shareAll(opened->post, opened->match, desk.keeper(), storageIn(*found), desk.goOn());
    if (!shared)
        return shared.error();
    ShareReport report;
    report.trouble = sync::sentenceFor(shared->match);
    report.setBack = shared->match != sync::Match::Well && report.trouble.has_value();
    bool whole = !shared->boxes.empty();
    for (const auto &[box, exchanged] : shared->boxes) {
        addTo(report, desk, box, exchanged);
        whole = whole && !exchanged.stopped;
    }
    if (whole && !report.trouble) {
        if (const Outcome noted = sync::noteShared(desk.database(), desk.clock().nowMs()); !noted)
            return noted.error();
    }
    return report;
}

Result<sync::Invited> makeCode(CrewDesk &desk, const Whose &whose, sync::Asked asked, bool another)
{
    const auto box = desk.crewOf(whose);
    auto post = desk.post();
    if (!box || !post)
        return box ? post.error() : box.error();
    const auto home = sync::homeAskedInto(*post, *box, asked.role, another);
    if (!home)
        return home.error();
    asked.home = *home;
    if (const Outcome founded = sync::foundCrew(*post, *box); !founded)
        return founded.error();
    return sync::invite(*post, *box, asked);
}

Result<Heard> listen(CrewDesk &desk, const sync::Invited &invited)
{
    const auto found = desk.storage();
    if (!found)
        return found.error();
    if (const auto *why = std::get_if<wording::Sentence>(&*found))
        return Heard{std::nullopt, *why};
    const auto answer = sync::lookForKnock(invited, storageIn(*found));
    if (const auto trouble = sync::troubleIn(answer))
        return Heard{std::nullopt, sync::sentenceFor(*trouble)};
    return Heard{std::get<std::optional<sync::Knock>>(answer), std::nullopt};
}

Result<ShareReport> acceptKnock(CrewDesk &desk, const Whose &whose, const sync::Invited &invited,
                                const sync::Knock &knock)
{
    const auto box = desk.crewOf(whose);
    auto post = desk.post();
    if (!box || !post)
        return box ? post.error() : box.error();
    if (const Outcome done = sync::accept(*post, *box, invited, knock); !done)
        return done.error();
    return shareIfAgreed(desk);
}

Result<std::array<std::string, 3>> beginToJoin(CrewDesk &desk, const sync::JoinSecret &secret,
                                               const std::string &person, bool anew)
{
    if (anew) {
        auto opened = sync::openPost(desk.database(), desk.clock(), desk.entropy(), desk.keeper());
        if (!opened)
            return opened.error();
        if (const Outcome done = sync::comeAnew(opened->post, desk.keeper()); !done)
            return done.error();
    }
    const auto joining = sync::beginJoining(desk.database(), desk.clock(), desk.entropy(),
                                            desk.keeper(), secret, person);
    if (!joining)
        return joining.error();
    return joining->same;
}

Result<JoinReport> knock(CrewDesk &desk)
{
    const auto found = desk.storage();
    if (!found)
        return found.error();
    if (const auto *why = std::get_if<wording::Sentence>(&*found))
        return JoinReport{false, *why};
    const auto begun = sync::joiningIn(desk.database());
    if (!begun)
        return begun.error();
    if (*begun) {
        const auto step = sync::goOnJoining(desk.database(), desk.clock(), desk.entropy(),
                                            desk.keeper(), storageIn(*found));
        if (!step)
            return step.error();
        if (const auto trouble = sync::troubleIn(*step))
            return JoinReport{false, sync::sentenceFor(*trouble)};
        if (std::get<sync::Step>(*step) == sync::Step::Waiting)
            return JoinReport{};
        if (std::get<sync::Step>(*step) == sync::Step::Taken)
            return JoinReport{false, sync::codeTakenSentence()};
    }
    const auto report = share(desk);
    if (!report)
        return report.error();
    // It is in only once there is a box to be shown, or the table.
    const auto boxes = store::BoxRepository(desk.database()).boxes();
    const auto table = store::CrewRepository(desk.database()).crewOf(std::string(crew::clinicCrew));
    const bool any = (boxes && !boxes->empty()) || (table && !table->empty());
    return JoinReport{any, report->trouble};
}

Result<ShareReport> removeDevice(CrewDesk &desk, const Whose &whose, const DeviceId &device)
{
    const auto box = desk.crewOf(whose);
    auto post = desk.post();
    if (!box || !post)
        return box ? post.error() : box.error();
    const Outcome done = device == post->device.id ? sync::leave(*post, *box)
                                                   : sync::removeMember(*post, *box, device);
    if (!done)
        return done.error();
    return shareIfAgreed(desk);
}

} // namespace lidlark::mobile
