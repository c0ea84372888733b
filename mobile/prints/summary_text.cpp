#include "summary_text.h"

#include "core/wording/print_words.h"
#include "core/wording/summary_words.h"
#include "mobile/bridge/letters.h"

namespace lidlark::mobile {

namespace {

using wording::Sentence;

/// What stands on the page, in order.
class SummaryText
{
public:
    SummaryText(const Summary &summary, const PrintLanguage &in) : m_page(summary.page), m_in(in) {}

    [[nodiscard]] std::vector<SummaryPart> parts() const
    {
        return {goals(), played(), box(), unknown()};
    }

private:
    /// In whatever language a family wrote it: whole, also inside a line from the right.
    [[nodiscard]] QString asTyped(const std::string &words) const
    {
        return m_in.tell(wording::inList({words}));
    }

    [[nodiscard]] SummaryPart goals() const
    {
        SummaryPart part{m_in.tell(wording::summaryGoals()), {}};
        for (const child::Goal &goal : m_page.goals) {
            part.lines.push_back({asTyped(goal.words), true});
            for (int level = -2; level <= 2; ++level) {
                const bool now = level == goal.now;
                QString text = asTyped(child::levelOf(goal, level));
                if (now)
                    text =
                        capitalised(m_in.tell(wording::levelNow())) + QStringLiteral(": ") + text;
                part.lines.push_back({text, now, 1, now});
            }
            part.lines.push_back(
                {m_in.tell(wording::goalDates(goal.agreedOn, goal.reviewOn)), false, 1});
        }
        if (m_page.goals.empty())
            part.lines.push_back({m_in.tell(wording::noGoals())});
        return part;
    }

    [[nodiscard]] SummaryPart played() const
    {
        SummaryPart part{m_in.tell(wording::summaryPlayed()), {}};
        if (!m_page.playsTold) {
            part.lines.push_back({m_in.tell(wording::playsNotTold())});
            return part;
        }
        for (const usecase::PlayedActivity &played : m_page.played)
            part.lines.push_back({lineOf(played)});
        if (m_page.played.empty())
            part.lines.push_back({m_in.tell(wording::nothingWritten())});
        if (m_page.morePlayed)
            part.lines.push_back({m_in.tell(wording::andOthers())});
        return part;
    }

    [[nodiscard]] QString lineOf(const usecase::PlayedActivity &played) const
    {
        const catalogue::Activity *activity = m_in.catalogue().activity(played.activity);
        return m_in.tell(wording::playedWords(activity, played.activity, played.noticed));
    }

    [[nodiscard]] std::vector<wording::Argument> namesOf(const std::vector<ItemId> &items) const
    {
        std::vector<wording::Argument> names;
        names.reserve(items.size());
        for (const ItemId &item : items)
            names.push_back(m_in.nameOf(item, 2));
        return names;
    }

    [[nodiscard]] SummaryPart box() const
    {
        const usecase::BoxTold &box = m_page.box;
        std::vector<Sentence> said;
        if (box.isComplete())
            said.push_back(wording::boxComplete());
        if (!box.none.empty())
            said.push_back(wording::boxNone(namesOf(box.none)));
        if (!box.low.empty())
            said.push_back(wording::boxLow(namesOf(box.low)));
        if (!box.open.empty())
            said.push_back(wording::boxOpen(namesOf(box.open)));
        if (!box.asked.empty())
            said.push_back(wording::boxAsked(namesOf(box.asked)));
        if (box.pieceMissing)
            said.push_back(wording::boxPieceMissing());
        said.push_back(wording::boxCounted(box.wholeCounted));
        SummaryPart part{m_in.tell(wording::summaryBox()), {}};
        for (const Sentence &sentence : said)
            part.lines.push_back({m_in.tell(sentence)});
        return part;
    }

    [[nodiscard]] SummaryPart unknown() const
    {
        SummaryPart part{m_in.tell(wording::summaryUnknown()), {}};
        for (const Sentence &sentence : wording::whatNobodyKnows(m_page.child, m_page.playsTold))
            part.lines.push_back({m_in.tell(sentence)});
        return part;
    }

    const usecase::SummaryPage &m_page;
    const PrintLanguage &m_in;
};

} // namespace

std::vector<SummaryPart> summaryParts(const Summary &summary, const PrintLanguage &in)
{
    return SummaryText(summary, in).parts();
}

QString summaryFoot(const Summary &summary, const PrintLanguage &in)
{
    QString text = in.tell(wording::nothingGraded());
    if (summary.page.playsTold && !summary.yes)
        text += u' ' + in.tell(wording::toldAsShared());
    if (summary.yes)
        text += u' ' + in.tell(wording::toldWith(summary.yes->person, summary.yes->day));
    return text;
}

} // namespace lidlark::mobile
