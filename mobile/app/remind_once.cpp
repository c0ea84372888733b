#include "remind_once.h"

#include <QEventLoop>

#include "app_clock.h"

#include "core/usecase/families.h"
#include "core/usecase/remind.h"
#include "core/wording/reminder_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"
#include "mobile/platform/notifier.h"

#include <cstdio>

namespace lidlark::mobile {

namespace {

bool said(Notifier &notifier, const QString &line)
{
    QEventLoop answer;
    bool shown = false;
    bool answered = false;
    QObject::connect(&notifier, &Notifier::said, &answer, [&](bool well) {
        shown = well;
        answered = true;
        answer.quit();
    });
    notifier.say(line);
    if (!answered)
        answer.exec();
    return shown;
}

} // namespace

int remindOnce(const StartOptions &options, Notifier &notifier)
{
    const store::FamilyFolder folder(toCore(options.store));
    auto phone = store::Database::openExisting(folder.first());
    if (!phone)
        return 0; // a phone without a family has nothing to say
    const std::unique_ptr<Clock> clock = clockFrom(options);
    const auto reminder = usecase::reminderOf(*phone);
    if (!reminder || !usecase::takeTurnToRemind(*phone, folder, *clock).due)
        return 0;
    const auto names = usecase::namesIn(usecase::familiesIn(folder));
    if (said(notifier, translated(wording::reminderLine(*reminder, names))))
        return 0;
    (void)usecase::giveTurnBack(*phone);
    std::fputs("No notification service answers: nothing was shown.\n", stderr);
    return 1;
}

} // namespace lidlark::mobile
