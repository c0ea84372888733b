#include "own_writing_view_model.h"

#include "core/catalogue/item_tags.h"
#include "core/catalogue/tag_floor.h"
#include "core/wording/own_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr int lookAfterMs = 700; ///< Nobody is interrupted in the middle of a word.
constexpr int monthsInHalfYear = 6;
constexpr auto lidOn = "Lid on"; ///< As the loader wants the last line of what uses the box.

std::vector<OwnLines::Line> shown(const std::vector<std::string> &texts)
{
    std::vector<OwnLines::Line> lines;
    for (const std::string &text : texts)
        lines.push_back({fromCore(text), 0});
    return lines;
}

std::vector<OwnLines::Line> shown(const std::vector<catalogue::Grading> &gradings)
{
    std::vector<OwnLines::Line> lines;
    for (const catalogue::Grading &grading : gradings)
        lines.push_back({fromCore(grading.text), static_cast<int>(grading.lever)});
    return lines;
}

std::vector<std::string> texts(const OwnLines &lines)
{
    std::vector<std::string> all;
    for (const OwnLines::Line &line : lines.lines())
        all.push_back(oneLine(line.text));
    return all;
}

std::vector<catalogue::Grading> gradings(const OwnLines &lines)
{
    std::vector<catalogue::Grading> all;
    for (const OwnLines::Line &line : lines.lines())
        all.push_back({static_cast<catalogue::Lever>(line.lever), oneLine(line.text), {}});
    return all;
}

} // namespace

OwnWritingViewModel::OwnWritingViewModel(QObject *parent)
    : QObject(parent), m_steps(4, this), m_easier(3, this), m_harder(3, this), m_watchFor(2, this),
      m_stopWhen(2, this), m_say(2, this), m_putBack(7, this)
{
    for (OwnLines *lines :
         {&m_steps, &m_easier, &m_harder, &m_watchFor, &m_stopWhen, &m_say, &m_putBack})
        connect(lines, &OwnLines::edited, this, &OwnWritingViewModel::touch);
    for (OwnChoice *choice : {&m_mainSkills, &m_alsoSkills, &m_closeness, &m_positions, &m_space,
                              &m_mess, &m_sound, &m_energy, &m_hands, &m_moreCautions})
        connect(choice, &OwnChoice::tapped, this, &OwnWritingViewModel::touch);
    connect(&m_things, &OwnThings::edited, this, &OwnWritingViewModel::touch);
    m_soon.setSingleShot(true);
    m_soon.setInterval(lookAfterMs);
    connect(&m_soon, &QTimer::timeout, this, &OwnWritingViewModel::lookOver);
}

OwnWritingViewModel::~OwnWritingViewModel()
{
    keep();
}

void OwnWritingViewModel::setHousehold(Household *household)
{
    m_household = household;
    load();
}

void OwnWritingViewModel::setEntry(const QString &entry)
{
    m_entry = entry;
    load();
}

void OwnWritingViewModel::load()
{
    if (m_household == nullptr || m_entry.isEmpty() || !m_household->isOpen())
        return;
    auto draft = ownWriting(*m_household, m_entry);
    m_problem = draft ? QString() : m_household->sentenceFor(draft.error());
    if (!draft)
        return;
    m_draft = *std::move(draft);
    m_added = m_draft.cautions.without(givenTags());
    m_loading = true;
    showDraft();
    m_loading = false;
    m_signedOff = mobile::isSignedOff(*m_household, m_entry);
    lookOver();
    emit edited();
}

void OwnWritingViewModel::showDraft()
{
    std::vector<std::string> home = m_draft.putBack;
    if (!home.empty() && home.back() == lidOn)
        home.pop_back();
    std::vector<std::string> steps;
    for (const catalogue::Step &step : m_draft.steps)
        steps.push_back(step.text);
    m_steps.show(shown(steps));
    m_easier.show(shown(m_draft.easier));
    m_harder.show(shown(m_draft.harder));
    m_watchFor.show(shown(m_draft.watchFor));
    m_stopWhen.show(shown(m_draft.stopWhen));
    m_say.show(shown(m_draft.say));
    m_putBack.show(shown(home));
    m_things.show(m_household, m_draft.items);
    askChoices();
    askSetting();
}

/// Of what the lines and the things hold, the draft.
void OwnWritingViewModel::takeIn()
{
    m_draft.steps.clear();
    for (const std::string &text : texts(m_steps))
        m_draft.steps.push_back({text, {}});
    m_draft.easier = gradings(m_easier);
    m_draft.harder = gradings(m_harder);
    m_draft.watchFor = texts(m_watchFor);
    m_draft.stopWhen = texts(m_stopWhen);
    m_draft.say = texts(m_say);
    m_draft.putBack = texts(m_putBack);
    m_draft.items = m_things.uses();
    std::erase_if(m_draft.swaps, [this](const catalogue::ActivitySwap &swap) {
        return std::ranges::find(m_draft.items, swap.item, &catalogue::ItemUse::item) ==
               m_draft.items.end();
    });
    m_draft.noBox = !m_draft.usesBox();
    if (!m_draft.noBox)
        m_draft.putBack.emplace_back(lidOn);
    const bool gone =
        m_draft.makes && std::ranges::any_of(*m_draft.makes, [&](const auto &piece) {
            return std::ranges::find(m_draft.items, piece.of, &catalogue::ItemUse::item) ==
                   m_draft.items.end();
        });
    if (gone)
        m_draft.makes.reset();
    setSmallPieces(smallPieces());
    m_draft.cautions = givenTags() | m_added;
    if (m_draft.ageFloorMonths > 0)
        m_draft.ageFloorMonths =
            std::max(m_draft.ageFloorMonths, earliestHalfYears() * monthsInHalfYear);
    const catalogue::ItemKind *first =
        m_draft.items.empty() ? nullptr : m_household->catalogue().item(m_draft.items.front().item);
    m_draft.picture = first != nullptr ? catalogue::Picture{first->drawing, first->alt}
                                       : catalogue::Picture{"item-box", "A box."};
}

void OwnWritingViewModel::touch()
{
    if (m_loading || m_household == nullptr)
        return;
    takeIn();
    m_signedOff = false;
    const Outcome held = holdWriting(*m_household, m_draft);
    m_problem = held ? QString() : m_household->sentenceFor(held.error());
    m_soon.start();
    emit edited();
}

void OwnWritingViewModel::write(std::string &field, const QString &words)
{
    const std::string line = oneLine(words);
    if (line == field)
        return;
    field = line;
    touch();
}

void OwnWritingViewModel::keep()
{
    if (m_household == nullptr || m_entry.isEmpty() || !m_household->isOpen())
        return;
    if (const Outcome kept = keepWriting(*m_household, m_entry); !kept) {
        m_problem = m_household->sentenceFor(kept.error());
        emit lookedOver();
    }
}

void OwnWritingViewModel::lookOver()
{
    m_soon.stop();
    const auto findings = findingsOf(*m_household, m_draft);
    if (findings)
        tell(*findings);
    else
        m_problem = m_household->sentenceFor(findings.error());
    emit lookedOver();
}

bool OwnWritingViewModel::makeReady()
{
    if (m_household == nullptr)
        return false;
    m_soon.stop();
    const auto findings = signOff(*m_household, m_entry);
    m_problem = findings ? QString() : m_household->sentenceFor(findings.error());
    if (findings)
        tell(*findings);
    m_signedOff = findings && findings->clean();
    if (m_signedOff)
        load(); // its version may be another now
    emit lookedOver();
    return m_signedOff;
}

bool OwnWritingViewModel::throwAway()
{
    if (m_household == nullptr)
        return false;
    const Outcome done = throwAwayOwn(*m_household, m_entry);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    if (done)
        m_entry.clear(); // nothing of it is kept as the page goes
    emit lookedOver();
    return done.ok();
}

catalogue::TagSet OwnWritingViewModel::givenTags() const
{
    catalogue::TagSet tags;
    for (const catalogue::ItemUse &use : m_draft.items) {
        if (const catalogue::ItemKind *kind = m_household->catalogue().item(use.item))
            tags = tags | catalogue::tagsBroughtBy(*kind);
    }
    if (smallPieces())
        tags.add(catalogue::Tag::Small);
    return tags;
}

int OwnWritingViewModel::halfYears() const
{
    return m_draft.ageFloorMonths / monthsInHalfYear;
}

void OwnWritingViewModel::setHalfYears(int halfYears)
{
    m_draft.ageFloorMonths = std::max(halfYears, earliestHalfYears()) * monthsInHalfYear;
    touch();
}

int OwnWritingViewModel::earliestHalfYears() const
{
    int months = 12;
    for (const catalogue::Tag tag : m_draft.cautions.list())
        months = std::max(months, catalogue::floorMonthsOf(tag));
    return (months + monthsInHalfYear - 1) / monthsInHalfYear;
}

QString OwnWritingViewModel::ageWords() const
{
    return m_draft.ageFloorMonths > 0 ? translated(wording::fromAgeWords(m_draft.ageFloorMonths))
                                      : tr("From which age on?");
}

int OwnWritingViewModel::partsToMend() const
{
    return static_cast<int>(
        std::ranges::count_if(m_toMend, [](const QString &words) { return !words.isEmpty(); }));
}

} // namespace lidlark::mobile
