#include "home_sheet_view_model.h"

#include "core/child/avoided.h"
#include "core/child/phone_number.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/safety_words.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void HomeSheetViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &HomeSheetViewModel::load);
    load();
}

void HomeSheetViewModel::load()
{
    renewRows([this] { readRows(); });
    emit loaded();
}

void HomeSheetViewModel::readRows()
{
    m_rows.clear();
    m_family.reset();
    m_avoids = !m_household->takeOuts().empty();
    auto family = m_household->family();
    if (family)
        m_family = *std::move(family);
    if (m_family && m_family->sheet) {
        const child::HomeSheet &sheet = *m_family->sheet;
        m_rows = {
            {"", "latex",
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Must anyone here avoid latex?")),
             SafetyWords::of(
                 QT_TRANSLATE_NOOP("SafetyWords", "Balloons, rubber bands, many soft balls.")),
             sheet.avoidances.latex},
            {"", "latex-risk",
             SafetyWords::of(QT_TRANSLATE_NOOP(
                 "SafetyWords",
                 "Has anyone here spina bifida, had many operations, or reacted to banana, "
                 "avocado, kiwi or chestnut?")),
             SafetyWords::of(QT_TRANSLATE_NOOP(
                 "SafetyWords", "Then latex is avoided too. Talk to a clinician about it.")),
             sheet.avoidances.latexRisk},
            {"", "wheat",
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Is anyone here allergic to wheat?")),
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Bought dough is mostly wheat.")),
             sheet.avoidances.wheat},
            {"", "coeliac",
             SafetyWords::of(
                 QT_TRANSLATE_NOOP("SafetyWords", "Does anyone here have coeliac disease?")),
             QString(), sheet.avoidances.coeliac},
            {"", "likes-touch",
             SafetyWords::about(QT_TRANSLATE_NOOP("SafetyWords", "Does %1 like firm touch?"),
                                m_household->child()),
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Not said counts as no.")),
             sheet.likesTouch},
            {"", "pets",
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Is there a dog or a cat?")),
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Salty dough can poison them.")),
             sheet.pets ? child::Answer::Yes : child::Answer::No},
            {"", "high-storage",
             SafetyWords::of(
                 QT_TRANSLATE_NOOP("SafetyWords", "Is there a high place for the box?")),
             SafetyWords::of(QT_TRANSLATE_NOOP("SafetyWords", "Out of reach of small children.")),
             sheet.highStorage ? child::Answer::Yes : child::Answer::No}};
        for (const child::Person &person : sheet.people) {
            if (person.kind == child::PersonKind::Child)
                m_rows.push_back(
                    {person.id.value, "mouths",
                     SafetyWords::about(
                         QT_TRANSLATE_NOOP("SafetyWords", "Does %1 put things in the mouth?"),
                         fromCore(person.alias)),
                     SafetyWords::of(
                         QT_TRANSLATE_NOOP("SafetyWords", "Not said counts as yes under three.")),
                     person.mouths});
        }
    }
}

QStringList HomeSheetViewModel::rowKeys() const
{
    QStringList keys;
    keys.reserve(static_cast<qsizetype>(m_rows.size()));
    for (const Row &row : m_rows)
        keys.append(fromCore(row.fact + row.person));
    return keys;
}

int HomeSheetViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant HomeSheetViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case QuestionRole:
        return row.question;
    case NoteRole:
        return row.note;
    case AnswerRole:
        return static_cast<int>(row.answer);
    default:
        return {};
    }
}

QHash<int, QByteArray> HomeSheetViewModel::roleNames() const
{
    return {{QuestionRole, "question"}, {NoteRole, "note"}, {AnswerRole, "answer"}};
}

QStringList HomeSheetViewModel::people() const
{
    QStringList lines;
    if (!m_family || !m_family->sheet)
        return lines;
    for (const child::Person &person : m_family->sheet->people) {
        const QString name = isolated(fromCore(person.alias));
        if (person.kind == child::PersonKind::Adult) {
            lines.append(tr("%1, grown-up").arg(name));
            continue;
        }
        if (!person.age) {
            lines.append(tr("%1, age not said: counts as under three").arg(name));
            continue;
        }
        const int months = person.age->youngestMonths(m_household->today().day);
        lines.append(numerals(months < 36 ? tr("%1, %n month(s)", "", months).arg(name)
                                          : tr("%1, %n year(s)", "", months / 12).arg(name)));
    }
    return lines;
}

QString HomeSheetViewModel::homeName() const
{
    return m_family && m_family->sheet ? fromCore(m_family->sheet->name) : QString();
}

void HomeSheetViewModel::say(int index, int answer)
{
    if (index < 0 || index >= rowCount() || answer < 1 || answer > 2 || !m_family)
        return;
    const Row row = m_rows[static_cast<std::size_t>(index)];
    const Outcome done = usecase::sayFact(m_household->workplace(), m_family->home,
                                          {row.person, row.fact, answer == 1 ? "yes" : "no"});
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    m_household->announce();
    // The careful answer stands while somebody else still says it.
    const auto stands = m_rows[static_cast<std::size_t>(index)].answer;
    if (done && static_cast<int>(stands) != answer)
        m_problem = tr("Somebody else has said otherwise; the careful answer stands until they "
                       "change theirs.");
    emit loaded();
    if (done && answer == 1 && child::avoidedBy(row.fact) && m_household->somethingMustLeave())
        emit mustLeave();
}

QString HomeSheetViewModel::emergencyNumber() const
{
    return m_family && m_family->sheet ? fromCore(m_family->sheet->emergencyNumber) : QString();
}

QString HomeSheetViewModel::poisonLine() const
{
    return m_family && m_family->sheet ? fromCore(m_family->sheet->poisonLine) : QString();
}

QString HomeSheetViewModel::keepEmergencyNumber(const QString &number)
{
    return keepNumber(child::emergencyNumberFact, number);
}

QString HomeSheetViewModel::keepPoisonLine(const QString &number)
{
    return keepNumber(child::poisonLineFact, number);
}

QString HomeSheetViewModel::keepNumber(std::string_view fact, const QString &number)
{
    if (!m_family)
        return {};
    const Outcome done =
        usecase::sayFact(m_household->workplace(), m_family->home,
                         {std::string(), std::string(fact), toCore(number.trimmed())});
    if (!done)
        return m_household->sentenceFor(done.error());
    m_household->announce();
    return {};
}

} // namespace lidlark::mobile
