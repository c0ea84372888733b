#pragma once

#include "crew_judge.h"
#include "sim_acts.h"

namespace lidlark::test {

/// How phones meet: over a storage that breaks, with batteries that die, or from hand to hand.
struct CrewWire {
    SimDice &dice;
    CrewJudge &judge;
    const CrewJudge::Phones &phones;
    samples::ShakyStorage storage;
    std::int64_t now = 0;
    bool calm = false;    ///< Nothing breaks any more.
    bool settled = false; ///< And everybody has met everybody.
    int exchanges = 0;
    int deaths = 0;
    int bundles = 0;

    /// One exchange, which may break off anywhere.
    void meet(SimPhone &phone)
    {
        phone.tell(now);
        const sync::Match match = phone.match();
        if (match != sync::Match::Well)
            judge.fail(phone, "does not know its own store");
        ++exchanges;
        PowerlessStorage wire(storage);
        if (!calm && dice.oneIn(5))
            wire.dieAt(dice.below(40), dice.oneIn(2));
        int steps = !calm && dice.oneIn(8) ? dice.below(10) : 1'000'000;
        sync::Post mine = phone.post();
        try {
            const auto shared =
                sync::shareAll(mine, match, phone.keeper, wire, [&steps] { return steps-- > 0; });
            if (!shared)
                judge.fail(phone, "exchange: " + shared.error().detail);
            else
                read(phone, *shared);
        } catch (const PowerLoss &) {
            ++deaths;
        }
        judge.look(phone);
    }

    void read(SimPhone &phone, const sync::Shared &shared)
    {
        for (const auto &[box, report] : shared.boxes) {
            if (report.copied)
                judge.fail(phone, "takes itself for a copy");
            for (const sync::Finding &finding : report.findings) {
                const bool unfinished = finding.kind == sync::FindingKind::Missing && !settled;
                if (!unfinished && !isOfRemoved(finding.device))
                    judge.fail(phone, "finding " + std::to_string(static_cast<int>(finding.kind)) +
                                          " " + toText(finding.lane) + " " + finding.device.value);
            }
        }
    }

    [[nodiscard]] bool isOfRemoved(const DeviceId &device) const
    {
        return std::ranges::none_of(phones, [&device](const auto &phone) {
            return phone->in && phone->device.id == device;
        });
    }

    /// One phone's files, from hand to hand; sometimes twice.
    void handOver(SimPhone &from, SimPhone &to)
    {
        sync::Post theirs = from.post();
        const auto bundle = sync::bundleOfCrew(theirs, effiesBox);
        if (!bundle)
            return judge.fail(from, "bundle: " + bundle.error().detail);
        const auto bytes = sync::bundleOf(*bundle);
        const auto read = bytes ? std::get<sync::Bundle>(sync::bundleFrom(*bytes)) : sync::Bundle();
        sync::BundleStorage file(read);
        sync::Post mine = to.post();
        ++bundles;
        for (int time = dice.below(2); time < 2; ++time) {
            if (const auto taken = sync::takeInByHand(mine, effiesBox, file); !taken)
                judge.fail(to, "handed over: " + taken.error().detail);
        }
        judge.look(from);
        judge.look(to);
    }
};

} // namespace lidlark::test
