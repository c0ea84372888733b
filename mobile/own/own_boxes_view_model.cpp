#include "own_boxes_view_model.h"

#include "core/catalogue/write_entry.h"
#include "core/wording/reason_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void OwnBoxesViewModel::setHousehold(Household *household)
{
    m_household = household;
    if (household != nullptr)
        connect(household, &Household::changed, this, &OwnBoxesViewModel::load);
    load();
}

void OwnBoxesViewModel::setEntry(const QString &entry)
{
    m_entry = entry;
    load();
}

void OwnBoxesViewModel::setThing(bool thing)
{
    m_thing = thing;
    load();
}

void OwnBoxesViewModel::setAsked(bool asked)
{
    m_asked = asked;
    load();
    // A thing of ours that measures otherwise is what it is in every box where that changes
    // something: who wants it to count in fewer says so.
    for (const Row &row : m_rows) {
        if (m_thing && !catalogue::isOwnId(toCore(m_entry)) && !row.changes.isEmpty())
            m_chosen.insert(row.child);
    }
    emit loaded();
}

/// Drafts are looked at by nobody but their writer: nothing is asked of the gate for them.
void OwnBoxesViewModel::load()
{
    if (m_household == nullptr || m_entry.isEmpty() || !m_household->isOpen())
        return;
    renewRows([this] {
        m_rows.clear();
        if (!m_asked)
            return;
        auto rows = m_thing ? thingRows() : activityRows();
        m_problem = rows ? QString() : m_household->sentenceFor(rows.error());
        if (rows)
            m_rows = *std::move(rows);
    });
    emit loaded();
}

Result<std::vector<OwnBoxesViewModel::Row>> OwnBoxesViewModel::activityRows()
{
    const auto activity = ownWriting(*m_household, m_entry);
    if (!activity)
        return activity.error();
    const auto fits = fitsOf(*m_household, *activity);
    if (!fits)
        return fits.error();
    std::vector<Row> rows;
    for (const usecase::OwnFit &fit : *fits)
        rows.push_back({fromCore(fit.child),
                        noteOf(fit, yamlOf(*activity)),
                        {},
                        fit.inBox && !fit.inBox->withdrawn});
    return rows;
}

int OwnBoxesViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QString OwnBoxesViewModel::noteOf(const usecase::OwnFit &fit, const std::string &text) const
{
    QStringList lines;
    if (fit.inBox && fit.inBox->isOffered() && fit.inBox->known.text == text)
        lines.append(tr("In the box."));
    else if (fit.inBox && fit.inBox->unsettled)
        lines.append(tr("In the box in two wordings: send this one, and it is settled."));
    else if (fit.inBox && !fit.inBox->withdrawn)
        lines.append(tr("In the box, in older words."));
    if (fit.fits)
        lines.append(tr("It fits."));
    if (!fit.fits)
        lines.append(tr("Held back there:"));
    for (const safety::Reason &reason : fit.reasons)
        lines.append(translated(wording::sentenceFor(reason, m_household->catalogue())));
    return lines.join(QLatin1Char('\n'));
}

QVariant OwnBoxesViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ChildRole:
        return row.child;
    case NoteRole:
        return row.note;
    case ChangesRole:
        return row.changes;
    case InBoxRole:
        return row.inBox;
    case ChosenRole:
        return m_chosen.contains(row.child);
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnBoxesViewModel::roleNames() const
{
    return {{ChildRole, "child"},
            {NoteRole, "note"},
            {ChangesRole, "changes"},
            {InBoxRole, "inBox"},
            {ChosenRole, "chosen"}};
}

QStringList OwnBoxesViewModel::rowKeys() const
{
    QStringList keys;
    for (const Row &row : m_rows)
        keys.append(row.child);
    return keys;
}

QString OwnBoxesViewModel::unchanged() const
{
    QStringList children;
    for (const Row &row : m_rows) {
        if (row.changes.isEmpty())
            children.append(row.child);
    }
    return children.join(QStringLiteral(", "));
}

void OwnBoxesViewModel::choose(const QString &child, bool chosen)
{
    if (chosen)
        m_chosen.insert(child);
    else
        m_chosen.erase(child);
    emit dataChanged(index(0), index(rowCount() - 1), {ChosenRole});
    emit loaded();
}

void OwnBoxesViewModel::answer(const Outcome &outcome)
{
    const QString problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    m_household->announce(); // a part of it may be said
    m_problem = problem;
    emit loaded();
}

bool OwnBoxesViewModel::send()
{
    const std::set<QString> chosen = m_chosen;
    for (const QString &child : chosen) {
        const Outcome sent = m_thing ? sendItem(*m_household, child, m_entry)
                                     : sendOwn(*m_household, child, m_entry);
        if (!sent) {
            answer(sent);
            return false;
        }
        m_chosen.erase(child);
    }
    answer(Done{});
    return true;
}

void OwnBoxesViewModel::withdraw(const QString &child)
{
    answer(m_thing ? withdrawItem(*m_household, child, m_entry)
                   : withdrawOwn(*m_household, child, m_entry));
}

} // namespace lidlark::mobile
