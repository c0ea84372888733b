#include "play_view_model.h"

#include "core/wording/caution_words.h"
#include "mobile/bridge/guarding_words.h"
#include "mobile/bridge/label_region.h"
#include "mobile/bridge/own_desk.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/spoken_language.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr std::size_t cautionsInTheStrip = 2;

QStringList linesOf(const std::vector<std::string> &texts)
{
    QStringList lines;
    for (const std::string &text : texts)
        lines.append(fromCore(text));
    return lines;
}

} // namespace

void PlayViewModel::setPlayInHand(PlayInHand *playInHand)
{
    m_playInHand = playInHand;
    connect(playInHand, &PlayInHand::changed, this, &PlayViewModel::changed);
    emit changed();
}

/// Null until the screen has said whose play it is.
const catalogue::Activity *PlayViewModel::activityInHand() const
{
    return m_playInHand != nullptr ? m_playInHand->activity() : nullptr;
}

QString PlayViewModel::name() const
{
    if (m_playInHand == nullptr)
        return {};
    return m_playInHand->activityName();
}

QString PlayViewModel::lead() const
{
    if (m_playInHand == nullptr || m_household == nullptr)
        return {};
    return safetyText(
        wording::supervisionLead(m_playInHand->supervision(), toCore(m_household->child())));
}

std::vector<wording::Sentence> PlayViewModel::cautionSentences() const
{
    const catalogue::Activity *activity = activityInHand();
    if (activity == nullptr)
        return {};
    std::vector<wording::Sentence> sentences =
        wording::cautionsFor(m_playInHand->cautions(), *activity);
    sentences.push_back(wording::closingLine());
    return sentences;
}

QStringList PlayViewModel::allCautions() const
{
    QStringList lines;
    const std::vector<wording::Sentence> sentences = cautionSentences();
    for (const wording::Sentence &sentence : sentences)
        lines.append(safetyText(sentence));
    return lines;
}

bool PlayViewModel::inTwoLanguages() const
{
    return !spokenLanguage().reviewed;
}

QString PlayViewModel::cautions() const
{
    std::vector<wording::Sentence> sentences = cautionSentences();
    if (sentences.size() > cautionsInTheStrip)
        sentences.resize(cautionsInTheStrip);
    return safetyText(sentences);
}

std::vector<wording::LabelWords> PlayViewModel::label() const
{
    const catalogue::Activity *activity = activityInHand();
    if (activity == nullptr || m_household == nullptr)
        return {};
    return wording::labelWords(*activity, m_playInHand->items(), m_playInHand->cautions(),
                               m_household->catalogue(), labelRegionHere());
}

QStringList PlayViewModel::labelWords() const
{
    QStringList lines;
    for (const wording::LabelWords &line : label())
        lines.append(withEnglish(line.words));
    return lines;
}

QString PlayViewModel::labelSource() const
{
    QStringList sources;
    for (const wording::LabelWords &line : label())
        sources.append(translated(line.source));
    sources.removeDuplicates();
    return sources.join(QStringLiteral("; "));
}

QString PlayViewModel::adultLine() const
{
    const catalogue::Activity *activity = activityInHand();
    return activity != nullptr ? fromCore(activity->adultLine) : QString();
}

QString PlayViewModel::invite() const
{
    const catalogue::Activity *activity = activityInHand();
    return activity != nullptr ? fromCore(activity->invite) : QString();
}

int PlayViewModel::stepCount() const
{
    const catalogue::Activity *activity = activityInHand();
    return activity != nullptr ? static_cast<int>(activity->steps.size()) : 0;
}

int PlayViewModel::step() const
{
    if (m_playInHand == nullptr)
        return 0;
    return std::clamp(m_playInHand->step(), 0, std::max(0, stepCount() - 1));
}

const catalogue::Step *PlayViewModel::currentStep() const
{
    return stepCount() > 0 ? &activityInHand()->steps[static_cast<std::size_t>(step())] : nullptr;
}

QString PlayViewModel::writtenBy() const
{
    const catalogue::Activity *activity = activityInHand();
    return activity != nullptr && m_household != nullptr ? ownNotice(*m_household, *activity)
                                                         : QString();
}

QString PlayViewModel::stepText() const
{
    const catalogue::Step *current = currentStep();
    return current != nullptr ? fromCore(current->text) : QString();
}

QString PlayViewModel::drawing() const
{
    const catalogue::Step *current = currentStep();
    if (current == nullptr)
        return {};
    return fromCore(current->picture ? current->picture->drawing
                                     : activityInHand()->picture.drawing);
}

QString PlayViewModel::drawingAlt() const
{
    const catalogue::Step *current = currentStep();
    if (current == nullptr)
        return {};
    return fromCore(current->picture ? current->picture->alt : activityInHand()->picture.alt);
}

QString PlayViewModel::lineOf(play::Way way) const
{
    const catalogue::Activity *activity = activityInHand();
    if (activity == nullptr)
        return {};
    const play::GradingUsed used = m_playInHand->grading();
    const catalogue::Grading *inUse = used.way == way ? play::lineFor(*activity, used) : nullptr;
    const auto &lines = play::linesOf(*activity, way);
    if (inUse == nullptr && lines.empty())
        return {};
    return fromCore(inUse != nullptr ? inUse->text : lines.front().text);
}

QString PlayViewModel::easier() const
{
    return lineOf(play::Way::Easier);
}

QString PlayViewModel::harder() const
{
    return lineOf(play::Way::Harder);
}

QString PlayViewModel::way() const
{
    const auto way = m_playInHand != nullptr ? m_playInHand->grading().way : play::Way::AsWritten;
    return fromCore(play::wayNames.of(way));
}

QString PlayViewModel::gradingNote() const
{
    if (m_playInHand == nullptr)
        return {};
    const bool asWritten = m_playInHand->grading().way == play::Way::AsWritten;
    switch (m_playInHand->gradingFrom()) {
    case usecase::GradingFrom::LastTime:
        return asWritten ? QString() : tr("As you played it last.");
    case usecase::GradingFrom::Therapist:
        return asWritten ? tr("Your therapist asks for it as written.")
                         : tr("Your therapist asks for it this way.");
    case usecase::GradingFrom::Nobody:
        break;
    }
    return asWritten ? QString() : tr("This way it stands first next time.");
}

QStringList PlayViewModel::swapLines() const
{
    QStringList lines;
    const catalogue::Activity *activity = activityInHand();
    if (activity == nullptr)
        return lines;
    const auto &english = catalogue::inEnglish(*activity).swaps;
    for (std::size_t i = 0; i < activity->swaps.size(); ++i) {
        const catalogue::ActivitySwap &swap = activity->swaps[i];
        const auto used = m_playInHand->swaps().find(swap.item);
        if (used != m_playInHand->swaps().end() && used->second == swap.with)
            lines.append(guardingLine(*activity, swap.text, english.at(i).text));
    }
    return lines;
}

QStringList PlayViewModel::say() const
{
    const catalogue::Activity *activity = activityInHand();
    return activity != nullptr ? linesOf(activity->say) : QStringList();
}

QStringList PlayViewModel::watchFor() const
{
    const catalogue::Activity *activity = activityInHand();
    return activity != nullptr ? guardingLines(*activity, &catalogue::Activity::watchFor)
                               : QStringList();
}

QStringList PlayViewModel::waysIn() const
{
    const catalogue::Activity *activity = activityInHand();
    if (activity == nullptr)
        return {};
    const catalogue::WaysIn &ways = activity->waysIn;
    QStringList lines;
    const auto add = [&lines](const QString &head, const std::string &text) {
        if (!text.empty())
            lines.append(tr("%1: %2").arg(head, fromCore(text)));
    };
    add(tr("One hand"), ways.oneHand);
    add(tr("Seated"), ways.seated);
    add(tr("Low vision"), ways.lowVision);
    add(tr("Without speech"), ways.noSpeech);
    add(tr("Tires fast"), ways.tiresFast);
    return lines;
}

bool PlayViewModel::balloon() const
{
    return m_playInHand != nullptr && m_playInHand->cautions().has(catalogue::Tag::Balloon);
}

} // namespace lidlark::mobile
