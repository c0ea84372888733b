#include "mobile/bridge/letting_in.h"

#include "core/sync/invitation.h"
#include "core/sync/let_in.h"
#include "core/sync/sync_words.h"
#include "core/wording/day_words.h"
#include "core/wording/role_words.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

const QString otherParent = QStringLiteral("other-parent");
const QString packer = QStringLiteral("packer");

crew::Role roleOf(const QString &part)
{
    if (part == otherParent)
        return crew::Role::Parent;
    if (part == packer)
        return crew::Role::Therapist;
    return crew::roleNames.parse(toCore(part)).value_or(crew::Role::Guest);
}

} // namespace

LettingIn::LettingIn(QObject *parent) : QObject(parent)
{
    m_timer.setInterval(listenEveryMs);
    connect(&m_timer, &QTimer::timeout, this, &LettingIn::listen);
}

bool LettingIn::isAtTable() const
{
    return m_crew != nullptr && m_crew->table();
}

QStringList LettingIn::parts() const
{
    if (isAtTable())
        return {packer};
    return {QStringLiteral("caregiver"), QStringLiteral("parent"), otherParent,
            QStringLiteral("therapist"), QStringLiteral("guest")};
}

QString LettingIn::nameOf(const QString &part) const
{
    if (part == packer)
        return tr("Somebody who packs");
    return part == otherParent ? tr("Parent in another home")
                               : translated(wording::roleWord(roleOf(part)));
}

QString LettingIn::seenBy(const QString &part) const
{
    if (part == packer)
        return tr(
            "Sees the designs, the builds, what they cost and whom each box is for, and ticks "
            "what is packed. No child's goals, home sheet, plays or kites.");
    if (part == otherParent)
        return tr("Sees the box and the goals, and keeps a home sheet, plays and kites of their "
                  "own. Neither home sees the other's.");
    return translated(wording::whatRoleSees(roleOf(part)));
}

QString LettingIn::lastDay() const
{
    if (m_crew == nullptr)
        return {};
    const Day last = m_crew->household()->today().day + (m_days - 1);
    return tr("%1, %2").arg(translated(wording::weekdayWord(last)),
                            translated(wording::dateWords(last)));
}

QStringList LettingIn::words() const
{
    QStringList words;
    if (m_invited) {
        for (const std::string_view word : sync::wordsOf(m_invited->secret))
            words.append(fromCore(word));
    }
    return words;
}

QString LettingIn::squares() const
{
    if (!m_invited)
        return {};
    const std::string place = toCore(m_crew->place());
    const std::string shown = sync::isPlaceToShow(place) ? place : std::string();
    return fromCore(sync::qrTextOf({m_invited->secret, shown}).value_or(""));
}

QString LettingIn::ends() const
{
    if (!m_invited)
        return {};
    const Clock &clock = m_crew->household()->clock();
    const std::int64_t minute = m_invited->untilMs / msPerMinute + clock.offsetMinutes();
    return numerals(
        fromCore(wording::timeText({static_cast<int>(minute % (msPerDay / msPerMinute))})));
}

QString LettingIn::newcomer() const
{
    return m_knock ? fromCore(m_knock->newcomer.person) : QString();
}

QString LettingIn::sameWords() const
{
    if (!m_knock)
        return {};
    const auto &words = m_knock->same;
    return fromCore(words[0] + "  " + words[1] + "  " + words[2]);
}

sync::Asked LettingIn::asked() const
{
    sync::Asked asked{roleOf(m_part), {}, std::nullopt};
    if (asked.role == crew::Role::Guest)
        asked.until = m_crew->household()->today().day + (qBound(1, m_days, sync::guestDays) - 1);
    return asked;
}

void LettingIn::makeCode()
{
    m_busy = true;
    m_knock.reset();
    go(m_stage);
    m_crew->run<sync::Invited>(
        this,
        [whose = m_crew->whose(), asked = asked(), another = m_part == otherParent](
            CrewDesk &desk) { return mobile::makeCode(desk, whose, asked, another); },
        [this](const Result<sync::Invited> &invited) { take(invited); });
}

void LettingIn::take(const Result<sync::Invited> &invited)
{
    m_busy = false;
    if (!invited) {
        m_problem = m_crew->household()->sentenceFor(invited.error());
        emit changed();
        return;
    }
    m_invited = *invited;
    m_crew->household()->announce(); // there may be a crew now that was none
    m_timer.start();
    go(Shown);
}

void LettingIn::listen()
{
    if (!m_invited || m_busy || m_crew->busy())
        return;
    if (m_crew->household()->clock().nowMs() >= m_invited->untilMs) {
        endCode(Over);
        return;
    }
    m_busy = true;
    m_crew->run<Heard>(
        this, [invited = *m_invited](CrewDesk &desk) { return mobile::listen(desk, invited); },
        [this](const Result<Heard> &heard) { take(heard); });
}

void LettingIn::take(const Result<Heard> &heard)
{
    m_busy = false;
    if (m_stage != Shown)
        return;
    m_problem = !heard           ? m_crew->household()->sentenceFor(heard.error())
                : heard->trouble ? translated(*heard->trouble)
                                 : QString();
    if (heard && heard->knock) {
        m_knock = heard->knock;
        m_timer.stop();
        go(Knocked);
    }
    emit changed();
}

void LettingIn::letIn()
{
    if (!m_invited || !m_knock || m_busy)
        return;
    m_busy = true;
    go(m_stage);
    m_crew->run<ShareReport>(
        this,
        [whose = m_crew->whose(), invited = *m_invited, knock = *m_knock](CrewDesk &desk) {
            return acceptKnock(desk, whose, invited, knock);
        },
        [this](const Result<ShareReport> &report) {
            m_busy = false;
            m_crew->take(report);
            if (report)
                go(In);
            m_problem = report && report->trouble ? translated(*report->trouble)
                        : report                  ? QString()
                                 : m_crew->household()->sentenceFor(report.error());
            emit changed();
        });
}

void LettingIn::refuse()
{
    endCode(Whom);
}

void LettingIn::endCode(Stage stage)
{
    m_timer.stop();
    m_invited.reset();
    m_knock.reset();
    m_crew->run<Done>(
        m_crew,
        [whose = m_crew->whose()](CrewDesk &desk) -> Outcome {
            const auto box = desk.crewOf(whose);
            auto post = desk.post();
            if (!box || !post)
                return box ? post.error() : box.error();
            return sync::endInvitation(*post, *box);
        },
        [](const Outcome & /*ended*/) {}); // its ten minutes end it in any case
    go(stage);
}

void LettingIn::startAgain()
{
    m_timer.stop();
    go(Whom);
}

void LettingIn::go(Stage stage)
{
    const bool another = stage != m_stage;
    m_stage = stage;
    m_problem.clear();
    emit changed();
    if (another)
        emit stageChanged();
}

} // namespace lidlark::mobile
