#include "kite_view_model.h"

#include "core/wording/kite_words.h"
#include "core/wording/play_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int childTapsFromMonths = 36; // checkin.md 10, screen time

std::optional<checkin::Kite> kiteFrom(const QString &name)
{
    return checkin::kiteNames.parse(toCore(name));
}

} // namespace

bool KiteViewModel::byAdult() const
{
    if (m_byAdult || m_household == nullptr)
        return m_byAdult;
    const auto family = m_household->family();
    return family && family->child.age &&
           family->child.age->youngestMonths(m_household->today().day) < childTapsFromMonths;
}

void KiteViewModel::setByAdult(bool byAdult)
{
    m_byAdult = byAdult;
    emit byAdultChanged();
}

QString KiteViewModel::name(const QString &kite) const
{
    const auto parsed = kiteFrom(kite);
    return parsed ? translated(wording::kiteName(*parsed)) : QString();
}

QString KiteViewModel::note(const QString &kite) const
{
    const auto parsed = kiteFrom(kite);
    return parsed ? translated(wording::kiteNote(*parsed)) : QString();
}

QString KiteViewModel::question() const
{
    return translated(m_afterActivity.isEmpty() ? wording::kiteQuestion()
                                                : wording::kiteQuestionNow());
}

QString KiteViewModel::everyKite() const
{
    return translated(wording::everyKite());
}

QString KiteViewModel::line(const QString &picture) const
{
    const auto parsed = kiteFrom(picture);
    return translated(parsed ? wording::kiteLine(*parsed) : wording::handLine());
}

QString KiteViewModel::thanks() const
{
    return translated(wording::kiteThanks());
}

QStringList KiteViewModel::beforeAndNow(const QString &before, const QString &now) const
{
    const auto was = kiteFrom(before);
    const auto is = kiteFrom(now);
    if (!was || !is)
        return {};
    return {translated(wording::kiteWas(*was)), translated(wording::kiteIsNow(*was, *is))};
}

void KiteViewModel::show(const QString &kite)
{
    if (m_afterActivity.isEmpty())
        m_sitting->showKite(kite, byAdult());
    else
        m_sitting->showKiteAfter(kite, m_afterActivity);
    if (m_aloud && !byAdult())
        thankAloud(kite);
}

void KiteViewModel::thankAloud(const QString &kite) const
{
    QStringList lines{thanks()};
    if (!m_afterActivity.isEmpty())
        lines = beforeAndNow(m_sitting->kiteBefore(), kite) + lines;
    else if (m_sitting->everyKiteDue())
        lines.append(everyKite());
    m_voice->say(lines.join(u' '));
}

void KiteViewModel::ask() const
{
    if (m_aloud && !byAdult())
        m_voice->say(question());
}

void KiteViewModel::readAll() const
{
    QStringList lines{question()};
    for (const checkin::Kite kite :
         {checkin::Kite::Resting, checkin::Kite::Steady, checkin::Kite::Whirling})
        lines.append(translated(wording::kiteLine(kite)));
    m_voice->read(lines);
}

void KiteViewModel::cue(const QString &picture) const
{
    const QString word = name(picture);
    if (m_aloud)
        m_voice->say(word.isEmpty() ? line(picture) : word);
}

void KiteViewModel::readOne(const QString &picture) const
{
    m_voice->say(line(picture));
}

} // namespace lidlark::mobile
