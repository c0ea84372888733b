#include "own_notes_view_model.h"

#include "core/wording/day_words.h"
#include "core/wording/note_words.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

void OwnNotesViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &OwnNotesViewModel::load);
    load();
}

void OwnNotesViewModel::load()
{
    beginResetModel();
    m_notes = m_household->ownNotes();
    endResetModel();
    emit loaded();
}

int OwnNotesViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_notes.size());
}

const play::OwnNote *OwnNotesViewModel::at(int row) const
{
    return row >= 0 && row < rowCount() ? &m_notes[static_cast<std::size_t>(row)] : nullptr;
}

QVariant OwnNotesViewModel::data(const QModelIndex &index, int role) const
{
    const play::OwnNote *note = at(index.row());
    if (note == nullptr)
        return {};
    switch (role) {
    case WordsRole:
        return note->phrase ? translated(wording::notePhraseWords(*note->phrase))
                            : fromCore(note->words);
    case WhenRole:
        return translated(wording::dayHeading(note->when, m_household->today()));
    case SentRole:
        return note->sent;
    default:
        return {};
    }
}

QHash<int, QByteArray> OwnNotesViewModel::roleNames() const
{
    return {{WordsRole, "words"}, {WhenRole, "when"}, {SentRole, "sent"}};
}

QStringList OwnNotesViewModel::phrases()
{
    QStringList words;
    for (std::size_t i = 0; i < play::notePhraseCount; ++i)
        words.append(translated(wording::notePhraseWords(static_cast<play::NotePhrase>(i))));
    return words;
}

int OwnNotesViewModel::longest()
{
    return static_cast<int>(play::longestNote);
}

bool OwnNotesViewModel::keep(const QString &words)
{
    return report(m_household->keepNote(toCore(words)));
}

bool OwnNotesViewModel::keepPhrase(int phrase)
{
    if (phrase < 0 || phrase >= static_cast<int>(play::notePhraseCount))
        return false;
    return report(m_household->keepNote(static_cast<play::NotePhrase>(phrase)));
}

bool OwnNotesViewModel::remove(int row)
{
    const play::OwnNote *note = at(row);
    return note != nullptr && report(m_household->removeNote(note->id));
}

bool OwnNotesViewModel::chooseToSend(int row, bool send)
{
    const play::OwnNote *note = at(row);
    return note != nullptr && report(m_household->chooseToSend(note->id, send));
}

bool OwnNotesViewModel::report(const Outcome &outcome)
{
    m_problem = outcome ? QString() : m_household->sentenceFor(outcome.error());
    if (outcome)
        m_household->announce();
    else
        emit loaded();
    return outcome.ok();
}

} // namespace lidlark::mobile
