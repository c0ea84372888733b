#include "pack_paper.h"

#include "core/wording/pack_list_words.h"
#include "core/wording/pack_words.h"
#include "mobile/bridge/text.h"

namespace lidlark::mobile {

namespace {

constexpr int calledPixels = 40;
constexpr int calledInset = 30;

} // namespace

QString PackPaper::called(const workbench::CallOut &call) const
{
    const auto names = [this](const ItemId &item) { return items.nameOf(item); };
    return told({wording::callOutWords(call, names), call.kind == workbench::CallKind::Avoids});
}

std::vector<wording::CalledLine> PackPaper::called(const workbench::PackBox &box) const
{
    return wording::callOutLines(box.callOuts,
                                 [this](const ItemId &item) { return items.nameOf(item); });
}

QString PackPaper::told(const wording::CalledLine &line) const
{
    // What a home must avoid guards somebody: words nobody has checked have the English under them.
    return line.guards ? page.in().tongue().guard({line.words}) : tell(line.words);
}

QString PackPaper::wrongWith(const workbench::PackLine &line) const
{
    if (line.perhapsTwice)
        return tell(wording::perhapsTwiceWords());
    const bool wrong = line.state == workbench::LineState::WrongHand ||
                       line.state == workbench::LineState::WrongCount;
    return wrong ? tell(wording::lineWords(line)) : QString();
}

QString PackPaper::whose(const std::string &alias) const
{
    return alias.empty() ? tell(wording::nobodysBox()) : fromCore(alias);
}

void PackPaper::square(PrintSheet &sheet, int left, int top, bool done) const
{
    const int side = page.tenths(packSquare);
    sheet.square({left, top, side, side});
    if (done)
        sheet.tick({left, top, side, side});
}

int CalledRow::textHeight() const
{
    return m_page.heightOf(m_text, m_page.tenths(calledPixels), PrintSheet::Bold,
                           m_page.width() - 2 * m_page.tenths(calledInset));
}

void CalledRow::paint(PrintSheet &sheet, int top) const
{
    const int inset = m_page.tenths(calledInset);
    const QRect place{m_page.margin(), top + m_page.tenths(8), m_page.width(),
                      textHeight() + m_page.tenths(32)};
    sheet.block(place);
    sheet.words(m_text, m_page.tenths(calledPixels), PrintSheet::Bold | PrintSheet::White,
                place.adjusted(inset, m_page.tenths(16), -inset, 0));
}

} // namespace lidlark::mobile
