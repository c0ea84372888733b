#include "core/rotation/instance.h"

#include <algorithm>
#include <charconv>
#include <optional>
#include <sstream>
#include <string_view>

namespace lidlark::rotation {

namespace {

// So narrow that no sum of the search comes near the end of its type (plan_prices.cpp).
constexpr int mostActivities = 20'000;
constexpr int mostPerDay = 10;
constexpr int mostDays = 31;
constexpr int mostSkills = 64;
constexpr int mostItems = 1'000;
constexpr int mostMinutes = 1'000'000;
constexpr int mostValue = 1'000'000;
constexpr int mostStock = 100'000;
constexpr int mostPieces = 1'000;
constexpr int mostAmount = 10'000;
constexpr int mostFamily = 1'000'000;
constexpr int mostWeight = 100;
constexpr int mostSlope = 1'000;
constexpr int mostSegments = 16;
constexpr std::int64_t mostGain = 100'000'000; // of all curves together

/// The format line by line, word by word. The first thing that is wrong is kept, and from then on
/// every reading gives zero.
class InstanceReader
{
public:
    explicit InstanceReader(const std::string &text) : m_lines(text) {}

    Result<Instance> read();

private:
    bool nextLine();
    std::string word(const std::string &field);
    void keyword(const std::string &expected);
    int number(const std::string &field, int least, int most);
    int numberIn(std::string_view text, const std::string &field, int least, int most);
    std::vector<int> numbers(const std::string &field, int count, int most);
    std::vector<std::pair<int, int>> pairs(const std::string &field, int end, int most);
    void endOfLine();
    void wrong(const std::string &field, const std::string &reason);

    void readSizes();
    void readCurve(int skill);
    void readEntry(int id);

    std::istringstream m_lines;
    std::istringstream m_words;
    int m_line = 0;
    std::optional<Error> m_problem;
    Instance m_instance;
    int m_activities = 0;
    int m_days = 0;
    int m_skills = 0;
    int m_items = 0;
    std::int64_t m_gain = 0;
};

void InstanceReader::wrong(const std::string &field, const std::string &reason)
{
    if (!m_problem)
        m_problem = Error{ErrorCode::Invalid,
                          "line " + std::to_string(m_line) + ", " + field + ": " + reason};
}

bool InstanceReader::nextLine()
{
    std::string line;
    ++m_line;
    if (m_problem || !std::getline(m_lines, line)) {
        wrong("end", "the file stops here");
        return false;
    }
    m_words = std::istringstream(line);
    return true;
}

std::string InstanceReader::word(const std::string &field)
{
    std::string word;
    if (!(m_words >> word))
        wrong(field, "missing");
    return word;
}

void InstanceReader::keyword(const std::string &expected)
{
    if (const std::string found = word(expected); found != expected)
        wrong(expected, "not found here");
}

int InstanceReader::numberIn(std::string_view text, const std::string &field, int least, int most)
{
    int number = 0;
    const char *end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    if (error == std::errc() && stop == end && number >= least && number <= most)
        return number;
    wrong(field,
          "not a whole number from " + std::to_string(least) + " to " + std::to_string(most));
    return 0;
}

int InstanceReader::number(const std::string &field, int least, int most)
{
    return numberIn(word(field), field, least, most);
}

std::vector<int> InstanceReader::numbers(const std::string &field, int count, int most)
{
    std::vector<int> numbers;
    if (!nextLine())
        return numbers;
    keyword(field);
    for (int i = 0; i < count && !m_problem; ++i)
        numbers.push_back(number(field, 0, most));
    endOfLine();
    return numbers;
}

/// "3:5,7:2", or "-" for none. The first number of each is below @p end and comes once.
std::vector<std::pair<int, int>> InstanceReader::pairs(const std::string &field, int end, int most)
{
    std::vector<std::pair<int, int>> pairs;
    const std::string all = word(field);
    if (all == "-")
        return pairs;
    std::istringstream parts(all);
    std::string part;
    while (!m_problem && std::getline(parts, part, ',')) {
        const auto colon = part.find(':');
        if (colon == std::string::npos) {
            wrong(field, "not such as 3:5,7:2");
            break;
        }
        const int which = numberIn(std::string_view(part).substr(0, colon), field, 0, end - 1);
        const int amount = numberIn(std::string_view(part).substr(colon + 1), field, 0, most);
        const bool again =
            std::ranges::any_of(pairs, [which](const auto &pair) { return pair.first == which; });
        if (again)
            wrong(field, std::to_string(which) + " twice");
        pairs.emplace_back(which, amount);
    }
    return pairs;
}

void InstanceReader::endOfLine()
{
    std::string more;
    if (m_words >> more)
        wrong(more, "one word too many");
}

void InstanceReader::readSizes()
{
    if (!nextLine())
        return;
    keyword("lidrot");
    if (number("lidrot", 0, 1'000) != 1)
        wrong("lidrot", "only version 1 is known");
    endOfLine();
    if (!nextLine())
        return;
    keyword("n");
    m_activities = number("n", 0, mostActivities);
    keyword("k");
    m_instance.perDay = static_cast<std::size_t>(number("k", 1, mostPerDay));
    keyword("days");
    m_days = number("days", 1, mostDays);
    keyword("skills");
    m_skills = number("skills", 0, mostSkills);
    keyword("items");
    m_items = number("items", 0, mostItems);
    endOfLine();
}

void InstanceReader::readCurve(int skill)
{
    if (!nextLine())
        return;
    keyword("skill");
    if (number("skill", 0, mostSkills) != skill)
        wrong("skill", "not in order");
    keyword("w");
    const int weight = number("w", 0, mostWeight);
    keyword("seg");
    Curve curve;
    int before = mostSlope + 1;
    std::string part;
    while (!m_problem && m_words >> part) {
        const auto colon = std::min(part.find(':'), part.size());
        const int width = numberIn(std::string_view(part).substr(0, colon), "seg", 1, mostAmount);
        const int slope = numberIn(std::string_view(part).substr(std::min(colon + 1, part.size())),
                                   "seg", 0, mostSlope);
        if (slope >= before || curve.size() == mostSegments)
            wrong("seg", "slopes must strictly fall, in at most 16 segments");
        before = slope;
        curve.push_back({width, slope * weight});
        m_gain += static_cast<std::int64_t>(width) * slope * weight;
    }
    if (m_gain > mostGain)
        wrong("seg", "all skills together are worth more than 100000000");
    m_instance.problem.curves.push_back(std::move(curve));
}

void InstanceReader::readEntry(int id)
{
    if (!nextLine())
        return;
    Entry entry;
    keyword("a");
    if (number("a", 0, mostActivities) != id)
        wrong("a", "ids run from 0, in order");
    keyword("v");
    entry.worth = number("v", -mostValue, mostValue);
    keyword("m");
    entry.minutes = number("m", 0, mostMinutes);
    keyword("y");
    entry.isMessy = number("y", 0, 1) == 1;
    keyword("f");
    const int family = number("f", 0, mostFamily);
    entry.family = family == 0 ? noFamily : family;
    keyword("e");
    for (const auto &[curve, minutes] : pairs("e", m_skills, mostAmount))
        entry.amounts.push_back({curve, minutes});
    keyword("i");
    for (const auto &[item, pieces] : pairs("i", m_items, mostPieces))
        entry.needs.push_back({item, pieces});
    endOfLine();
    m_instance.problem.entries.push_back(std::move(entry));
}

Result<Instance> InstanceReader::read()
{
    readSizes();
    m_instance.minutes = numbers("minutes", m_days, mostMinutes);
    m_instance.messy = numbers("messy", m_days, mostActivities);
    m_instance.problem.stock = numbers("stock", m_items, mostStock);
    for (int skill = 0; skill < m_skills && !m_problem; ++skill)
        readCurve(skill);
    for (int id = 0; id < m_activities && !m_problem; ++id)
        readEntry(id);
    std::string more;
    while (!m_problem && std::getline(m_lines, more)) {
        ++m_line;
        if (more.find_first_not_of(" \t\r") != std::string::npos)
            wrong("end", "more lines than n says");
    }
    if (m_problem)
        return *m_problem;
    return m_instance;
}

} // namespace

ChoiceRules rulesOf(const Instance &instance, std::size_t day)
{
    ChoiceRules rules;
    rules.offers = instance.perDay;
    // Nothing of our own menus: only the families apart and the mess.
    rules.inForce = ConditionsInForce(static_cast<std::size_t>(SideCondition::Family));
    rules.messyMost = std::min(instance.messy[day], static_cast<int>(instance.perDay));
    rules.minutes = instance.minutes[day];
    return rules;
}

Result<Instance> readInstance(const std::string &text)
{
    return InstanceReader(text).read();
}

} // namespace lidlark::rotation
