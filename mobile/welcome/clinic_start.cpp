#include "clinic_start.h"

namespace lidlark::mobile {

bool ClinicStart::begin(const QString &person)
{
    if (m_household == nullptr)
        return false;
    const Outcome done = m_household->setUpClinic(person);
    m_problem = done ? QString() : m_household->sentenceFor(done.error());
    emit problemChanged();
    return done.ok();
}

} // namespace lidlark::mobile
