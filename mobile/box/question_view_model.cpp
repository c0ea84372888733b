#include "question_view_model.h"

#include "item_words.h"

#include "mobile/bridge/letters.h"
#include "mobile/bridge/sentence.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

using box::QuestionLook;

void QuestionViewModel::setHousehold(Household *household)
{
    m_household = household;
    connect(household, &Household::changed, this, &QuestionViewModel::load);
    load();
}

void QuestionViewModel::setAsking(bool asking)
{
    m_asking = asking;
    load();
}

void QuestionViewModel::setItemId(const QString &itemId)
{
    m_itemId = itemId;
    load();
}

void QuestionViewModel::load()
{
    if (m_household == nullptr)
        return;
    beginResetModel();
    m_rows.clear();
    for (const usecase::BoxItem &item : m_household->boxItems()) {
        if (m_itemId.isEmpty() || fromCore(item.row.item.value) == m_itemId)
            take(item);
    }
    endResetModel();
    emit loaded();
}

void QuestionViewModel::take(const usecase::BoxItem &item)
{
    const std::string many = toCore(itemNameInside(item));
    const wording::PieceNames names{item.kind != nullptr ? item.kind->one : many, many};
    for (const box::Question &question : item.row.questions) {
        const QuestionLook look = box::lookOf(question, toCore(m_household->person()),
                                              m_household->device(), m_household->today().day);
        if (look != QuestionLook::Gone && (look == QuestionLook::Asks) == m_asking)
            m_rows.push_back({itemDrawing(item), names, question, look});
    }
}

int QuestionViewModel::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

QString QuestionViewModel::wordsOf(const Row &row) const
{
    if (row.look == QuestionLook::Said)
        return translated(wording::answerSaid(row.question));
    QStringList sentences;
    for (const auto &sentence :
         wording::questionWords(row.question, row.names, m_household->today()))
        sentences.append(translated(sentence));
    return sentences.join(u' ');
}

QString QuestionViewModel::noteOf(const Row &row)
{
    if (row.look == QuestionLook::Said)
        return tr("About %1").arg(isolated(fromCore(row.names.many)));
    if (row.look == QuestionLook::Asks)
        return {};
    return translated(wording::whoIsAsked(row.question)) + u' ' +
           tr("From tomorrow anybody may answer.");
}

QVariant QuestionViewModel::data(const QModelIndex &index, int role) const
{
    if (index.row() < 0 || index.row() >= rowCount())
        return {};
    const Row &row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case QuestionIdRole:
        return fromCore(row.question.id);
    case DrawingRole:
        return row.drawing;
    case WordsRole:
        return wordsOf(row);
    case NoteRole:
        return noteOf(row);
    case AnswersRole: {
        QStringList answers;
        if (row.look == QuestionLook::Asks) {
            for (const wording::AnswerChoice &choice : wording::answerChoices(row.question))
                answers.append(translated(choice.words));
        }
        return answers;
    }
    default:
        return {};
    }
}

QHash<int, QByteArray> QuestionViewModel::roleNames() const
{
    return {{QuestionIdRole, "questionId"},
            {DrawingRole, "drawing"},
            {WordsRole, "words"},
            {NoteRole, "note"},
            {AnswersRole, "answers"}};
}

void QuestionViewModel::answer(int index, int answer)
{
    if (index < 0 || index >= rowCount())
        return;
    const box::Question question = m_rows[static_cast<std::size_t>(index)].question;
    const auto choices = wording::answerChoices(question);
    if (answer < 0 || answer >= static_cast<int>(choices.size()))
        return;
    const Outcome done =
        m_household->answerQuestion(question.id, choices[static_cast<std::size_t>(answer)].answer);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    m_household->announce();
}

} // namespace lidlark::mobile
