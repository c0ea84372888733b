#include "own_writing_view_model.h"

#include "core/catalogue/item_tags.h"
#include "core/wording/caution_words.h"
#include "core/wording/own_words.h"
#include "core/wording/skill_words.h"
#include "core/wording/tag_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

/// Which part of the page a field of the file belongs to.
OwnWritingViewModel::Part partOf(const std::string &field)
{
    struct Begins {
        std::string_view with;
        OwnWritingViewModel::Part part;
    };
    static constexpr std::array begins{Begins{"skills", OwnWritingViewModel::Skills},
                                       Begins{"life_areas", OwnWritingViewModel::Skills},
                                       Begins{"items", OwnWritingViewModel::Things},
                                       Begins{"makes", OwnWritingViewModel::Things},
                                       Begins{"swaps", OwnWritingViewModel::Things},
                                       Begins{"minutes", OwnWritingViewModel::Time},
                                       Begins{"age_floor", OwnWritingViewModel::Time},
                                       Begins{"floor_reason", OwnWritingViewModel::Time},
                                       Begins{"supervision", OwnWritingViewModel::Time},
                                       Begins{"position", OwnWritingViewModel::Way},
                                       Begins{"ways_in", OwnWritingViewModel::Way},
                                       Begins{"hands", OwnWritingViewModel::Way},
                                       Begins{"claim", OwnWritingViewModel::Skills},
                                       Begins{"steps", OwnWritingViewModel::Steps},
                                       Begins{"easier", OwnWritingViewModel::Gradings},
                                       Begins{"harder", OwnWritingViewModel::Gradings},
                                       Begins{"cautions", OwnWritingViewModel::Cautions},
                                       Begins{"watch_for", OwnWritingViewModel::Cautions},
                                       Begins{"stop_when", OwnWritingViewModel::Cautions},
                                       Begins{"say", OwnWritingViewModel::Home},
                                       Begins{"put_back", OwnWritingViewModel::Home}};
    for (const Begins &one : begins) {
        if (field.starts_with(one.with))
            return one.part;
    }
    return OwnWritingViewModel::Words;
}

QStringList skillNames()
{
    QStringList words;
    for (std::size_t i = 0; i < catalogue::skillCount; ++i)
        words.append(
            capitalised(translated(wording::skillWords(static_cast<catalogue::Skill>(i)))));
    return words;
}

QStringList tagNames()
{
    QStringList words;
    for (std::size_t i = 0; i < catalogue::tagCount; ++i)
        words.append(translated({wording::tagShort(static_cast<catalogue::Tag>(i)), {}}));
    return words;
}

} // namespace

void OwnWritingViewModel::askChoices()
{
    m_mainSkills.ask(skillNames(), isAmong(m_draft.skillsMain), takeAmong(m_draft.skillsMain));
    m_alsoSkills.ask(skillNames(), isAmong(m_draft.skillsAlso), takeAmong(m_draft.skillsAlso));
    QStringList closeness;
    for (int i = 0; i < 3; ++i)
        closeness.append(
            translated(wording::supervisionShort(static_cast<catalogue::Supervision>(i))));
    m_closeness.ask(closeness, isOne(m_draft.supervision), takeOne(m_draft.supervision));
    m_moreCautions.ask(
        tagNames(),
        [this](int index) { return m_draft.cautions.has(static_cast<catalogue::Tag>(index)); },
        [this](int index) {
            const auto tag = static_cast<catalogue::Tag>(index);
            if (givenTags().has(tag))
                return; // what is reckoned from sizes and things nobody takes off
            if (m_added.has(tag))
                m_added.remove(tag);
            else
                m_added.add(tag);
        });
}

void OwnWritingViewModel::askSetting()
{
    m_positions.ask({tr("On a lap"), tr("On a chair"), tr("In a wheelchair"), tr("On the floor"),
                     tr("Lying on the side"), tr("Standing")},
                    isAmong(m_draft.positions), takeAmong(m_draft.positions));
    m_space.ask({tr("A lap"), tr("A table"), tr("A mat"), tr("A room")}, isOne(m_draft.space),
                takeOne(m_draft.space));
    m_mess.ask({tr("No mess"), tr("To wipe"), tr("To wash")}, isOne(m_draft.mess),
               takeOne(m_draft.mess));
    m_sound.ask({tr("Quiet"), tr("Ordinary"), tr("Loud")}, isOne(m_draft.sound),
                takeOne(m_draft.sound));
    m_energy.ask({tr("Little strength"), tr("Some strength"), tr("Much strength")},
                 isOne(m_draft.energy), takeOne(m_draft.energy));
    m_hands.ask({tr("No hand"), tr("One hand"), tr("Two hands")}, isOne(m_draft.hands),
                takeOne(m_draft.hands));
}

QStringList OwnWritingViewModel::levers()
{
    return {tr("Size"),    tr("Resistance"), tr("Speed"), tr("Distance"), tr("Steps"),
            tr("Support"), tr("Position"),   tr("Hand"),  tr("Memory"),   tr("Choice")};
}

QStringList OwnWritingViewModel::givenCautions() const
{
    QStringList lines;
    for (const catalogue::Tag tag : givenTags().list()) {
        QStringList from;
        for (const catalogue::ItemUse &use : m_draft.items) {
            const catalogue::ItemKind *kind = m_household->catalogue().item(use.item);
            if (kind != nullptr && catalogue::tagsBroughtBy(*kind).has(tag))
                from.append(fromCore(kind->name));
        }
        const QString words = translated({wording::tagShort(tag), {}});
        lines.append(from.isEmpty()
                         ? tr("%1: the pieces that come of it").arg(words)
                         : words + QStringLiteral(": ") + from.join(QStringLiteral(", ")));
    }
    return lines;
}

bool OwnWritingViewModel::divides() const
{
    return m_household != nullptr &&
           std::ranges::any_of(m_draft.items, [this](const catalogue::ItemUse &use) {
               const catalogue::ItemKind *kind = m_household->catalogue().item(use.item);
               return kind != nullptr && kind->divides;
           });
}

bool OwnWritingViewModel::smallPieces() const
{
    return divides() && m_draft.makes && !m_draft.makes->empty();
}

/// Pieces of which nobody knows the size are taken as small.
void OwnWritingViewModel::setSmallPieces(bool small)
{
    const bool was = smallPieces();
    if (!divides()) {
        m_draft.makes.reset();
    } else if (!small) {
        m_draft.makes.emplace();
    } else if (!was) {
        constexpr double smallMm = 10;
        const auto first =
            std::ranges::find_if(m_draft.items, [this](const catalogue::ItemUse &use) {
                const catalogue::ItemKind *kind = m_household->catalogue().item(use.item);
                return kind != nullptr && kind->divides;
            });
        m_draft.makes = std::vector<catalogue::MadePiece>{
            {"pieces", first->item, *measure::solidFrom("sphere", {smallMm})}};
    }
    if (small != was)
        touch();
}

void OwnWritingViewModel::suggestPutBack()
{
    std::vector<OwnLines::Line> lines = m_putBack.lines();
    std::erase_if(lines, [](const OwnLines::Line &line) { return line.text.trimmed().isEmpty(); });
    for (const catalogue::ItemUse &use : m_things.uses()) {
        if (use.fate == catalogue::Fate::UsedUp || static_cast<int>(lines.size()) >= 7)
            continue;
        const QString name = m_things.nameOf(fromCore(use.item.value));
        const bool isThere = std::ranges::any_of(lines, [&name](const OwnLines::Line &line) {
            return line.text.contains(name, Qt::CaseInsensitive);
        });
        if (!isThere)
            lines.push_back({tr("%1: count %2").arg(name, QString::number(use.quantity)), 0});
    }
    m_putBack.show(std::move(lines));
    touch();
}

QString OwnWritingViewModel::sentenceFor(const catalogue::LintFinding &finding) const
{
    if (m_household->language() != QLatin1String("en"))
        return translated(wording::ownRuleWords(finding.rule));
    return capitalised(fromCore(finding.problem)) + QStringLiteral(". ") + fromCore(finding.remedy);
}

void OwnWritingViewModel::tell(const usecase::OwnFindings &findings)
{
    std::array<QStringList, PartCount> parts;
    const auto add = [&parts](const std::string &field, const QString &words) {
        QStringList &lines = parts.at(static_cast<std::size_t>(partOf(field)));
        if (!lines.contains(words))
            lines.append(words);
    };
    for (const catalogue::Problem &problem : findings.refused)
        add(problem.field, translated(wording::ownFindingWords(problem)));
    for (const catalogue::LintFinding &finding : findings.lint)
        add(finding.field, sentenceFor(finding));
    m_toMend.clear();
    for (const QStringList &lines : parts)
        m_toMend.append(lines.join(QLatin1Char('\n')));
}

} // namespace lidlark::mobile
