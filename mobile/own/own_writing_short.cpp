#include "own_writing_view_model.h"

#include "core/wording/tag_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

QString inOneLine(const QStringList &words)
{
    return words.join(QStringLiteral(", "));
}

QStringList chosenOf(const std::vector<const OwnChoice *> &choices)
{
    QStringList names;
    for (const OwnChoice *choice : choices) {
        const QList<bool> chosen = choice->chosen();
        for (int i = 0; i < chosen.size(); ++i) {
            if (chosen[i])
                names.append(choice->names()[i]);
        }
    }
    return names;
}

/// The first line of each list that has one.
QString firstLines(const std::vector<const OwnLines *> &lists)
{
    QStringList first;
    for (const OwnLines *list : lists) {
        if (!list->lines().empty() && !list->lines().front().text.isEmpty())
            first.append(list->lines().front().text);
    }
    return first.join(QLatin1Char('\n'));
}

} // namespace

QStringList OwnWritingViewModel::inShort() const
{
    QStringList parts;
    parts.resize(PartCount);
    if (m_household == nullptr)
        return parts;
    QStringList things;
    for (const catalogue::ItemUse &use : m_draft.items)
        if (const catalogue::ItemKind *kind = m_household->catalogue().item(use.item))
            things.append(fromCore(kind->name));
    QStringList cautions;
    for (const catalogue::Tag tag : m_draft.cautions.list())
        cautions.append(translated({wording::tagShort(tag), {}}));
    parts[Words] = invite();
    parts[Things] = capitalised(inOneLine(things));
    parts[Steps] = firstLines({&m_steps});
    parts[Gradings] = firstLines({&m_easier, &m_harder});
    parts[Skills] = inOneLine(chosenOf({&m_mainSkills, &m_alsoSkills}));
    parts[Time] = ageWords();
    parts[Way] = inOneLine(chosenOf({&m_positions, &m_space, &m_hands}));
    parts[Cautions] = inOneLine(cautions);
    parts[Home] = firstLines({&m_say, &m_putBack});
    return parts;
}

} // namespace lidlark::mobile
