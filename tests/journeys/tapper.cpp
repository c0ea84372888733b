// Plays and puts back without end, as fast as the store can keep it, and says each act on standard
// output as soon as it has been acknowledged. The test kills it at a random moment.
//
//   lidlark-tapper STORE SEED

#include "core/store/recording.h"
#include "core/usecase/play_activity.h"
#include "core/usecase/progress.h"

#include "tests/support/phone.h"

#include <cstdio>

using namespace lidlark;
using namespace lidlark::test;

namespace {

void acknowledge(const std::string &line)
{
    std::printf("%s\n", line.c_str());
    std::fflush(stdout);
}

bool playOnce(usecase::Workplace &workplace, const BoxId &box)
{
    const auto play = usecase::startPlay(
        workplace, {"Fin", {"hidden-harbour-lights"}, {}, checkin::Kite::Steady});
    if (!play)
        return false;
    acknowledge("start " + play->value);
    usecase::Progress progress;
    progress.play = *play;
    progress.activity = {"hidden-harbour-lights"};
    progress.stage = usecase::Stage::PuttingBack;
    progress.began = *store::todayOf(workplace.clock);
    for (int home = 1; home <= 4; ++home) {
        progress.home[{"eyes"}] = home;
        if (!usecase::keepProgress(workplace, box, progress))
            return false;
        acknowledge("home " + std::to_string(home));
    }
    if (!usecase::nameExceptions(workplace, *play, {},
                                 {{{"eyes"}, box::ExceptionKind::StillInUse, 1}}))
        return false;
    acknowledge("named 1");
    if (!usecase::putBack(workplace, *play, {},
                          {{{"eyes"}, box::ExceptionKind::StillInUse, 2},
                           {{"dough"}, box::ExceptionKind::StillInUse, 1}}))
        return false;
    acknowledge("ended");
    return true;
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 3)
        return 2;
    auto opened = store::Database::openExisting(argv[1]);
    if (!opened)
        return 1;
    store::Database database = *std::move(opened);
    const auto device = store::DeviceRepository(database).device();
    StillClock clock(islandTime(11, 18, 10));
    SeededEntropy entropy(argv[2]);
    usecase::Workplace workplace{database, realCatalogue(), clock, entropy, **device};
    const auto box = store::BoxRepository(database).boxOf("Fin");
    acknowledge("ready");
    while (playOnce(workplace, box->id)) {
    }
    return 1;
}
