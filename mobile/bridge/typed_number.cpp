#include "mobile/bridge/typed_number.h"

#include <algorithm>

namespace lidlark::mobile {

namespace {

constexpr char16_t arabicDecimalMark = u'\u066B';

} // namespace

QString plainDigits(const QString &typed)
{
    QString plain = typed.trimmed();
    for (QChar &letter : plain) {
        if (letter == arabicDecimalMark)
            letter = u'.';
        else if (const int digit = letter.digitValue(); digit >= 0)
            letter = QChar(static_cast<char16_t>(u'0' + digit));
    }
    return plain;
}

int wholeFrom(const QString &typed, int most)
{
    const QString plain = plainDigits(typed);
    const bool digits = !plain.isEmpty() && std::all_of(plain.begin(), plain.end(), [](QChar one) {
        return one >= u'0' && one <= u'9';
    });
    bool fits = false;
    const int number = plain.toInt(&fits);
    return digits && fits && number <= most ? number : -1;
}

std::optional<double> amountFrom(const QString &typed, double least, double most)
{
    QString plain = plainDigits(typed);
    plain.replace(u',', u'.');
    const bool sound = !plain.isEmpty() && plain.count(u'.') <= 1 &&
                       std::all_of(plain.begin(), plain.end(), [](QChar one) {
                           return (one >= u'0' && one <= u'9') || one == u'.';
                       });
    bool read = false;
    const double amount = plain.toDouble(&read);
    if (!sound || !read || amount < least || amount > most)
        return std::nullopt;
    return amount;
}

QString typedAmount(double amount)
{
    return QString::number(amount, 'g', 6);
}

} // namespace lidlark::mobile
