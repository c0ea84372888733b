#include "welcome_view_model.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int monthsAYear = 12;

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

int WelcomeViewModel::thisYear() const
{
    return civilFrom(m_household->today().day).year;
}

QStringList WelcomeViewModel::otherChildren() const
{
    QStringList words;
    const Day today = m_household->today().day;
    for (const auto &other : m_others) {
        const int months = other.age ? other.age->youngestMonths(today) : -1;
        const QString name = fromCore(other.alias);
        if (months < 0)
            words.append(tr("%1, age not said").arg(name));
        else if (months < 2 * monthsAYear)
            words.append(tr("%1, %2 months").arg(name).arg(months));
        else
            words.append(tr("%1, %2 years").arg(name).arg(months / monthsAYear));
    }
    return words;
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

bool WelcomeViewModel::addChild(const QString &name, int years, int months, int mouths)
{
    if (name.trimmed().isEmpty()) {
        m_problem = tr("Give the child a name, or a letter.");
        emit changed();
        return false;
    }
    usecase::FirstAnswers::OtherChild other{toCore(name.trimmed()), std::nullopt,
                                            answerFrom(mouths)};
    if (years >= 0)
        other.age = child::ageFromMonths(years * monthsAYear + months, m_household->today().day);
    m_others.push_back(other);
    m_problem.clear();
    emit changed();
    return true;
}

void WelcomeViewModel::removeChild(int row)
{
    if (row < 0 || row >= static_cast<int>(m_others.size()))
        return;
    m_others.erase(m_others.begin() + row);
    emit changed();
}

bool WelcomeViewModel::finish()
{
    usecase::FirstAnswers answers;
    answers.childAlias = toCore(m_childName.trimmed());
    answers.adultAlias = toCore(m_adultName.trimmed());
    if (m_birthYear > 0 && m_birthMonth > 0)
        answers.age = child::ageFromBirthMonth(m_birthYear, m_birthMonth);
    answers.otherChildren = m_others;
    answers.latex = answerFrom(m_latex);
    answers.wheat = answerFrom(m_wheat);
    for (const Row &row : m_rows) {
        if (row.pieces > 0)
            answers.lidList[row.kind->id] = row.pieces;
    }
    const Outcome done = m_household->setUp(answers);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    emit changed();
    return done.ok();
}

} // namespace lidlark::mobile
