#include "mobile/bridge/joining_in.h"

#include <QImage>
#include <QUrl>

#include "core/sync/kept_place.h"
#include "core/sync/sync_words.h"
#include "core/sync/typed_code.h"
#include "mobile/bridge/crew_storage.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/seen_squares.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

/// Words that are still being typed are not yet wrong.
bool isEarly(const sync::WordProblem &problem, bool wordEnded)
{
    using Kind = sync::WordProblem::Kind;
    if (problem.kind == Kind::TooFew)
        return true;
    return problem.kind == Kind::Unknown && !wordEnded && problem.unknown.size() == 1 &&
           problem.unknown.front().place == problem.words;
}

} // namespace

JoiningIn::JoiningIn(QObject *parent) : QObject(parent)
{
    m_timer.setInterval(knockEveryMs);
    connect(&m_timer, &QTimer::timeout, this, &JoiningIn::knock);
}

void JoiningIn::setCrew(CrewLife *crew)
{
    m_crew = crew;
    if (crew->outside()) {
        m_person = crew->household()->person();
        m_place = crew->place();
    }
    if (crew->household()->isOpen())
        goOnWaiting();
}

void JoiningIn::goOnWaiting()
{
    const auto begun = sync::joiningIn(m_crew->household()->workplace().database);
    if (!begun || !*begun)
        return;
    m_secret = (*begun)->secret;
    m_person = fromCore((*begun)->device.person);
    m_place = m_crew->place();
    begin();
}

void JoiningIn::setTyped(const QString &typed)
{
    m_typed = typed;
    m_secret.reset();
    m_help.clear();
    const auto read = sync::secretFromWords(toCore(typed));
    if (const auto *problem = std::get_if<sync::WordProblem>(&read)) {
        const bool ended = typed.endsWith(u' ') || typed.endsWith(u'\n');
        if (!isEarly(*problem, ended))
            m_help = translated(sync::sentenceFor(*problem));
        m_soFar = tr("%1 of 9 words").arg(numerals(static_cast<int>(problem->words)));
    } else {
        m_secret = std::get<sync::JoinSecret>(read);
        m_soFar = tr("All nine words are right.");
    }
    emit changed();
}

bool JoiningIn::readPicture(const QString &file)
{
    const QUrl address(file);
    const QString path = address.isLocalFile() ? address.toLocalFile() : file.trimmed();
    const auto seen = squaresIn(QImage(path));
    return takeCode(seen ? seen->invitation : std::nullopt,
                    tr("The code was read from the picture."));
}

void JoiningIn::readSquares(const QString &text)
{
    (void)takeCode(invitationIn(toCore(text)), tr("The code was read by the camera."));
}

bool JoiningIn::takeCode(const std::optional<sync::Invitation> &invitation, const QString &whence)
{
    m_problem = invitation ? QString() : translated(sync::noPictureSentence());
    if (invitation) {
        m_secret = invitation->secret;
        m_place = fromCore(invitation->place);
        m_soFar = whence;
        m_help.clear();
    }
    emit changed();
    return invitation.has_value();
}

void JoiningIn::next()
{
    m_problem.clear();
    if (m_stage == Code && m_secret) {
        go(Where);
    } else if (m_stage == Where && !m_place.trimmed().isEmpty()) {
        const auto storage = storageFor(typedPlace());
        if (const auto *why = std::get_if<wording::Sentence>(&storage))
            m_problem = translated(*why);
        go(m_problem.isEmpty() ? Who : Where);
    } else if (m_stage == Who && !m_person.trimmed().isEmpty()) {
        begin();
    }
}

sync::CrewPlace JoiningIn::typedPlace() const
{
    return {toCore(m_place.trimmed()), toCore(m_user.trimmed()), toCore(m_password)};
}

void JoiningIn::back()
{
    m_problem.clear();
    if (m_stage == Where || m_stage == Who)
        go(m_stage == Who ? Where : Code);
}

void JoiningIn::begin()
{
    m_busy = true;
    emit changed();
    (void)m_crew->agreeAs(m_person.trimmed());
    m_crew->run<std::array<std::string, 3>>(
        this,
        [place = tidied(typedPlace()), secret = *m_secret, person = toCore(m_person.trimmed()),
         anew = m_crew->outside()](CrewDesk &desk) -> Result<std::array<std::string, 3>> {
            const auto known = sync::placeIn(desk.database(), desk.keeper());
            if (!known || !*known || (*known)->address != place.address) {
                if (const Outcome kept = sync::keepPlace(desk.database(), desk.keeper(), place);
                    !kept)
                    return kept.error();
            }
            return beginToJoin(desk, secret, person, anew);
        },
        [this](const Result<std::array<std::string, 3>> &same) {
            m_busy = false;
            m_problem = same ? QString() : m_crew->household()->sentenceFor(same.error());
            if (!same) {
                emit changed();
                return;
            }
            m_same = spaced(*same);
            go(Waiting);
            m_timer.start();
            knock();
        });
}

void JoiningIn::knock()
{
    if (m_busy)
        return;
    m_busy = true;
    m_crew->run<JoinReport>(
        this, [](CrewDesk &desk) { return mobile::knock(desk); },
        [this](const Result<JoinReport> &report) { take(report); });
}

void JoiningIn::take(const Result<JoinReport> &report)
{
    m_busy = false;
    m_problem = !report           ? m_crew->household()->sentenceFor(report.error())
                : report->trouble ? translated(*report->trouble)
                                  : QString();
    if (report && report->in) {
        m_timer.stop();
        m_crew->household()->openAgain();
        m_crew->household()->announce();
        go(In);
        emit joined();
    }
    emit changed();
}

void JoiningIn::giveUp()
{
    m_timer.stop();
    (void)sync::giveUpJoining(m_crew->household()->workplace().database);
    m_secret.reset();
    m_typed.clear();
    m_soFar.clear();
    go(Code);
}

void JoiningIn::go(Stage stage)
{
    const bool another = stage != m_stage;
    m_stage = stage;
    emit changed();
    if (another)
        emit stageChanged();
}

QString JoiningIn::spaced(const std::array<std::string, 3> &words) const
{
    return fromCore(words[0] + "  " + words[1] + "  " + words[2]);
}

} // namespace lidlark::mobile
