#include "welcome_view_model.h"

#include "core/safety/room.h"
#include "core/wording/closing_words.h"
#include "mobile/bridge/letters.h"
#include "mobile/bridge/numerals.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

child::Answer answerFrom(int index)
{
    return index == 1   ? child::Answer::Yes
           : index == 2 ? child::Answer::No
                        : child::Answer::Unanswered;
}

} // namespace

int WelcomeViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QVariant WelcomeViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ItemIdRole:
        return fromCore(row.kind->id.value);
    case NameRole:
        return fromCore(row.kind->name);
    case DrawingRole:
        return fromCore(row.kind->drawing);
    case PiecesRole:
        return row.pieces;
    default:
        return {};
    }
}

QHash<int, QByteArray> WelcomeViewModel::roleNames() const
{
    return {{ItemIdRole, "itemId"},
            {NameRole, "name"},
            {DrawingRole, "drawing"},
            {PiecesRole, "pieces"}};
}

QStringList WelcomeViewModel::otherChildren() const
{
    QStringList words;
    for (const OtherChild &other : m_others) {
        const QString age = other.years < 0    ? tr("age not said")
                            : other.years == 0 ? tr("under one")
                                               : numerals(tr("%n year(s)", "", other.years));
        const QString who = tr("%1, %2").arg(isolated(other.name), age);
        words.append(
            other.mouths == child::Answer::Yes ? tr("%1. Puts things in the mouth").arg(who) : who);
    }
    return words;
}

QString WelcomeViewModel::outOfReach() const
{
    if (m_household == nullptr) // read while the page is still being made
        return {};
    const Day today = m_household->today().day;
    std::vector<std::string> small;
    for (const usecase::FirstAnswers::OtherChild &other : answers().otherChildren) {
        const child::Person person{
            {}, other.alias, child::PersonKind::Child, other.age, other.mouths};
        if (safety::isUnderThree(person, today) || safety::isMouther(person, today))
            small.push_back(other.alias);
    }
    return small.empty() ? QString() : safetyText(wording::outOfReach(small));
}

void WelcomeViewModel::load()
{
    beginResetModel();
    m_rows.clear();
    for (const catalogue::ItemKind &kind : m_household->catalogue().items()) {
        if (kind.source == catalogue::Source::Box && kind.lidCount > 0)
            m_rows.push_back({&kind, kind.lidCount});
    }
    endResetModel();
}

void WelcomeViewModel::setPieces(int row, int pieces)
{
    if (row < 0 || row >= rowCount() || pieces < 0)
        return;
    m_rows[static_cast<std::size_t>(row)].pieces = pieces;
    emit dataChanged(index(row), index(row), {PiecesRole});
}

bool WelcomeViewModel::addChild(const QString &name, int years, int mouths)
{
    const bool named = !name.trimmed().isEmpty();
    m_problem = named ? QString() : tr("Give the child a name, or a letter.");
    if (named)
        m_others.push_back({name.trimmed(), years, answerFrom(mouths)});
    emit changed();
    return named;
}

void WelcomeViewModel::removeChild(int row)
{
    if (row < 0 || row >= static_cast<int>(m_others.size()))
        return;
    m_others.erase(m_others.begin() + row);
    emit changed();
}

usecase::FirstAnswers WelcomeViewModel::answers() const
{
    const Day today = m_household->today().day;
    const auto ageOf = [today](int years, int month) {
        return years < 0 ? std::nullopt : std::optional(child::ageFromYears(years, month, today));
    };
    usecase::FirstAnswers answers;
    answers.childAlias = toCore(m_childName.trimmed());
    answers.adultAlias = toCore(m_adultName.trimmed());
    answers.age = ageOf(m_years, m_month);
    for (const OtherChild &other : m_others)
        answers.otherChildren.push_back({toCore(other.name), ageOf(other.years, 0), other.mouths});
    answers.latex = answerFrom(m_latex);
    answers.wheat = answerFrom(m_wheat);
    for (const Row &row : m_rows) {
        if (row.pieces > 0)
            answers.lidList[row.kind->id] = row.pieces;
    }
    return answers;
}

bool WelcomeViewModel::finish()
{
    return report(m_household->setUp(answers()));
}

bool WelcomeViewModel::finishAnother()
{
    return report(m_household->addFamily(answers()));
}

bool WelcomeViewModel::finishHome()
{
    return report(m_household->tellHome(answers()));
}

bool WelcomeViewModel::report(const Outcome &done)
{
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    emit changed();
    return done.ok();
}

} // namespace lidlark::mobile
