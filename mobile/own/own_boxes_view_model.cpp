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

void OwnBoxesViewModel::setSignedOff(bool signedOff)
{
    m_signedOff = signedOff;
    load();
}

/// Drafts are looked at by nobody but their writer: nothing is asked of the gate for them.
void OwnBoxesViewModel::load()
{
    if (m_household == nullptr || m_entry.isEmpty() || !m_household->isOpen())
        return;
    renewRows([this] {
        m_rows.clear();
        const auto activity = m_signedOff ? ownWriting(*m_household, m_entry)
                                          : Result<catalogue::Activity>(catalogue::Activity());
        auto fits = activity && m_signedOff
                        ? fitsOf(*m_household, *activity)
                        : Result<std::vector<usecase::OwnFit>>(std::vector<usecase::OwnFit>());
        if (!activity || !fits) {
            m_problem = m_household->sentenceFor(activity ? fits.error() : activity.error());
            return;
        }
        m_activity = *activity;
        m_text = yamlOf(*activity);
        m_rows = *std::move(fits);
    });
    emit loaded();
}

int OwnBoxesViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

bool OwnBoxesViewModel::hasTheseWords(const usecase::OwnFit &fit) const
{
    return fit.inBox && fit.inBox->isOffered() && fit.inBox->known.text == m_text;
}

QString OwnBoxesViewModel::noteOf(const usecase::OwnFit &fit) const
{
    QStringList lines;
    if (hasTheseWords(fit))
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
    const usecase::OwnFit &fit = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case ChildRole:
        return fromCore(fit.child);
    case NoteRole:
        return noteOf(fit);
    case InBoxRole:
        return fit.inBox && !fit.inBox->withdrawn;
    case ChosenRole:
        return m_chosen.contains(fromCore(fit.child));
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnBoxesViewModel::roleNames() const
{
    return {{ChildRole, "child"}, {NoteRole, "note"}, {InBoxRole, "inBox"}, {ChosenRole, "chosen"}};
}

QStringList OwnBoxesViewModel::rowKeys() const
{
    QStringList keys;
    for (const usecase::OwnFit &fit : m_rows)
        keys.append(fromCore(fit.child));
    return keys;
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
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    else
        emit loaded();
}

bool OwnBoxesViewModel::send()
{
    const std::set<QString> chosen = m_chosen;
    for (const QString &child : chosen) {
        const Outcome sent = sendOwn(*m_household, child, m_entry);
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
    answer(withdrawOwn(*m_household, child, m_entry));
}

} // namespace lidlark::mobile
