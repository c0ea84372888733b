#include "build_view_model.h"

#include "mobile/bridge/text.h"

namespace lidlark::mobile {

using workbench::KeptBox;

namespace {

QString codeOf(const KeptBox &box)
{
    return fromCore(box.box.code);
}

QString whoseIs(const KeptBox &box)
{
    return fromCore(box.box.whose);
}

QString inOneLine(const std::vector<KeptBox> &boxes, QString (*of)(const KeptBox &))
{
    QStringList words;
    for (const KeptBox &box : boxes)
        words.append(of(box));
    return words.join(QStringLiteral(", "));
}

} // namespace

QString BuildViewModel::thought() const
{
    if (m_thought.empty())
        return {};
    const std::string &whose = m_thought.front().box.whose;
    if (m_thought.size() > 1 && !whose.empty())
        return tr("Boxes for %1").arg(inOneLine(m_thought, whoseIs));
    return tr("%1 for %2")
        .arg(inOneLine(m_thought, codeOf), whose.empty() ? tr("nobody yet") : fromCore(whose));
}

QStringList BuildViewModel::thoughtLines() const
{
    if (m_thought.empty())
        return {};
    const auto words = [this](const KeptBox &box) {
        return callOutsOf(box, designOf(box), m_names);
    };
    const bool theirs = m_thought.size() > 1 && !m_thought.front().box.whose.empty();
    QStringList lines = theirs ? QStringList() : words(m_thought.front());
    std::vector<KeptBox> plain;
    for (const KeptBox &box : m_thought) {
        const QStringList special = words(box);
        if (special.isEmpty())
            plain.push_back(box);
        else if (theirs)
            lines.append(tr("%1: %2").arg(whoseIs(box), special.join(u' ')));
    }
    if (theirs && !plain.empty() && !lines.isEmpty())
        lines.append(tr("As designed: %1").arg(inOneLine(plain, whoseIs)));
    return lines.isEmpty() ? QStringList{tr("As designed: nothing has to be swapped.")} : lines;
}

void BuildViewModel::setThought(const Result<std::vector<KeptBox>> &boxes)
{
    m_thought = boxes ? *boxes : std::vector<KeptBox>();
    m_problem = boxes ? QString() : m_household->sentenceFor(boxes.error());
    m_cost = m_thought.empty() ? QStringList() : moreBoxesWords(*m_household, m_build, m_thought);
    emit loaded();
}

void BuildViewModel::thinkOf(const QStringList &children)
{
    std::vector<std::string> aliases;
    for (const QString &child : children)
        aliases.push_back(toCore(child));
    setThought(usecase::boxesForChildren(m_household->workplace(), m_id, m_design, aliases));
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
