#include "own_item_view_model.h"

#include "core/catalogue/tag_floor.h"
#include "core/wording/measure_words.h"
#include "core/wording/own_item_words.h"
#include "core/wording/own_words.h"
#include "core/wording/tag_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int lookSoonMs = 700; ///< Nobody is interrupted in the middle of a number.

/// Which part of the page a field of the file belongs to.
OwnItemViewModel::Part partOfThing(std::string_view field)
{
    const std::string_view first = field.substr(0, field.find_first_of(".["));
    const auto among = [first](std::initializer_list<std::string_view> names) {
        return std::ranges::find(names, first) != names.end();
    };
    if (among({"measures"}))
        return OwnItemViewModel::Sizes;
    if (among({"tags", "allergens", "holds", "divides", "seated_only"}))
        return OwnItemViewModel::Materials;
    if (among({"cleanable", "single_child", "care", "life"}))
        return OwnItemViewModel::Keeping;
    if (among({"source", "lid_count", "comes_back", "use"}))
        return OwnItemViewModel::Place;
    return OwnItemViewModel::Names;
}

} // namespace

OwnItemViewModel::OwnItemViewModel(QObject *parent)
    : QObject(parent), m_whole(OwnSolids::Whole, this), m_worn(OwnSolids::Worn, this),
      m_comesOff(OwnSolids::Parts, this), m_care(8, this)
{
    askNumbers();
    listen();
    m_soon.setSingleShot(true);
    m_soon.setInterval(lookSoonMs);
    connect(&m_soon, &QTimer::timeout, this, &OwnItemViewModel::lookOver);
}

OwnItemViewModel::~OwnItemViewModel()
{
    keep();
}

void OwnItemViewModel::listen()
{
    for (OwnSolids *solids : {&m_whole, &m_worn, &m_comesOff})
        connect(solids, &OwnSolids::edited, this, &OwnItemViewModel::touch);
    for (OwnNumbers *numbers : {&m_cord, &m_hollow, &m_film, &m_keeping, &m_use})
        connect(numbers, &OwnNumbers::edited, this, &OwnItemViewModel::touch);
    for (OwnChoice *choice : {&m_rolls, &m_hollowIs, &m_filmHas, &m_allergens, &m_holds, &m_traits,
                              &m_cautions, &m_washing, &m_looking, &m_place, &m_comesBack})
        connect(choice, &OwnChoice::tapped, this, &OwnItemViewModel::touch);
    connect(&m_care, &OwnLines::edited, this, &OwnItemViewModel::touch);
}

void OwnItemViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void OwnItemViewModel::setEntry(const QString &entry)
{
    m_entry = entry;
    load();
}

void OwnItemViewModel::load()
{
    if (m_household == nullptr || m_entry.isEmpty() || !m_household->isOpen())
        return;
    auto draft = ownItemWriting(*m_household, m_entry);
    m_problem = draft ? QString() : m_household->sentenceFor(draft.error());
    if (!draft)
        return;
    m_ours = builtInItem(*m_household, m_entry);
    m_draft = *std::move(draft);
    m_added = kind().tags.without(givenTags());
    m_loading = true;
    showDraft();
    m_loading = false;
    m_signedOff = isItemSignedOff(*m_household, m_entry);
    m_weighed = false;
    lookOver();
    emit edited();
}

void OwnItemViewModel::touch()
{
    if (m_loading || m_household == nullptr)
        return;
    takeIn();
    m_signedOff = false;
    m_weighed = false;
    const Outcome held = holdItem(*m_household, m_draft);
    m_problem = held ? QString() : m_household->sentenceFor(held.error());
    m_soon.start();
    emit edited();
    emit lookedOver();
}

void OwnItemViewModel::write(std::string &field, const QString &words)
{
    const std::string line = oneLine(words);
    if (line == field)
        return;
    field = line;
    touch();
}

void OwnItemViewModel::keep()
{
    if (m_household == nullptr || m_entry.isEmpty() || !m_household->isOpen())
        return;
    if (const Outcome kept = keepItem(*m_household, m_entry); !kept) {
        m_problem = m_household->sentenceFor(kept.error());
        emit lookedOver();
    }
}

void OwnItemViewModel::lookOver()
{
    m_soon.stop();
    const auto findings = findingsOfItem(*m_household, m_draft);
    if (findings)
        tell(*findings);
    else
        m_problem = m_household->sentenceFor(findings.error());
    emit lookedOver();
}

void OwnItemViewModel::addToMend(Part part, const QString &sentence)
{
    QString &words = m_toMend[part];
    if (words.split(u'\n').contains(sentence))
        return;
    words += (words.isEmpty() ? QString() : QStringLiteral("\n")) + sentence;
}

void OwnItemViewModel::tell(const usecase::OwnFindings &findings)
{
    m_toMend = QStringList(PartCount);
    const bool begun = m_whole.solids().front().shape >= 0;
    for (const catalogue::Problem &problem : findings.refused) {
        // Once there is a shape, it is a number that is missing.
        if (!begun || problem.field != "measures.whole")
            addToMend(partOfThing(problem.field),
                      numerals(translated(wording::ownItemFindingWords(problem))));
    }
    const QString missing = tr("A number is missing, or is none.");
    if (begun && hasUnreadSizes())
        addToMend(Sizes, missing);
    if (m_keeping.isUnread())
        addToMend(Keeping, missing);
    if (!isLent() && m_use.isUnread())
        addToMend(Place, missing);
}

bool OwnItemViewModel::weigh()
{
    if (m_household == nullptr)
        return false;
    lookOver();
    m_weighed = m_problem.isEmpty() && partsToMend() == 0;
    emit lookedOver();
    return m_weighed;
}

bool OwnItemViewModel::signOff()
{
    if (m_household == nullptr || !m_weighed)
        return false;
    const auto findings = signOffItem(*m_household, m_entry);
    if (findings && findings->clean()) {
        load(); // its version may be another now
        return m_signedOff;
    }
    m_problem = findings ? QString() : m_household->sentenceFor(findings.error());
    if (findings)
        tell(*findings);
    m_weighed = false;
    emit lookedOver();
    return false;
}

bool OwnItemViewModel::throwAway()
{
    if (m_household == nullptr)
        return false;
    const Outcome done = throwAwayItem(*m_household, m_entry);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_entry.clear(); // nothing of it is kept as the page goes
    emit lookedOver();
    return done.ok();
}

int OwnItemViewModel::partsToMend() const
{
    return static_cast<int>(
        std::ranges::count_if(m_toMend, [](const QString &words) { return !words.isEmpty(); }));
}

QString OwnItemViewModel::follows() const
{
    if (hasUnreadSizes())
        return tr("A size is still to come, so it counts for nothing yet.");
    const auto words = wording::measuredWords(kind().measures);
    if (!words.empty())
        return safetyText(words);
    return kind().measures.whole ? tr("Nothing small and no long cord.")
                                 : tr("Nothing: it has no size to go by.");
}

QString OwnItemViewModel::minded() const
{
    QStringList names;
    for (const catalogue::Tag tag : kind().tags.list()) {
        const QString name = translated({wording::tagShort(tag), {}});
        names.append(names.isEmpty() ? name : uncapitalised(name));
    }
    return names.join(QStringLiteral(", "));
}

QString OwnItemViewModel::ageWords() const
{
    int months = 0;
    for (const catalogue::Tag tag : kind().tags.list())
        months = std::max(months, catalogue::floorMonthsOf(tag));
    return months > 0 ? translated(wording::fromAgeWords(months)) : QString();
}

} // namespace lidlark::mobile
