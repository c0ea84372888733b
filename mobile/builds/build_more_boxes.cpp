#include "build_view_model.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

QString BuildViewModel::thought() const
{
    if (m_thought.empty())
        return {};
    QStringList codes;
    for (const workbench::KeptBox &box : m_thought)
        codes.append(fromCore(box.box.code));
    const std::string &whose = m_thought.front().box.whose;
    return tr("%1 for %2")
        .arg(codes.join(QStringLiteral(", ")), whose.empty() ? tr("nobody yet") : fromCore(whose));
}

QStringList BuildViewModel::thoughtLines() const
{
    if (m_thought.empty())
        return {};
    const QStringList words = callOutsOf(m_thought.front(), designOf(m_thought.front()), m_names);
    return words.isEmpty() ? QStringList{tr("As designed: nothing has to be swapped.")} : words;
}

void BuildViewModel::setThought(const Result<std::vector<workbench::KeptBox>> &boxes)
{
    m_thought = boxes ? *boxes : std::vector<workbench::KeptBox>();
    m_problem = boxes ? QString() : m_household->sentenceFor(boxes.error());
    m_cost = m_thought.empty() ? QStringList() : moreBoxesWords(*m_household, m_build, m_thought);
    emit loaded();
}

void BuildViewModel::thinkOf(const QString &child)
{
    const auto box = usecase::boxForChild(m_household->workplace(), m_id, m_design, toCore(child));
    setThought(box ? Result<std::vector<workbench::KeptBox>>(std::vector{*box})
                   : Result<std::vector<workbench::KeptBox>>(box.error()));
}

void BuildViewModel::thinkOfSome(int boxes)
{
    setThought(usecase::boxesForNobody(m_household->workplace(), m_id, m_design, boxes));
}

void BuildViewModel::forget()
{
    m_thought.clear();
    m_cost.clear();
    m_problem.clear();
    emit loaded();
}

bool BuildViewModel::add()
{
    Outcome kept = usecase::keepBoxes(m_household->workplace(), m_id, m_thought);
    if (kept) {
        m_thought.clear();
        m_cost.clear();
    }
    m_problem = clinicAnswer(*m_household, kept);
    emit loaded();
    return m_problem.isEmpty();
}

} // namespace lidlark::mobile
