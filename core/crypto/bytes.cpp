#include "core/crypto/bytes.h"

#include <sodium.h>

namespace lidlark::crypto {

template <std::size_t Size> Secret<Size>::~Secret()
{
    sodium_memzero(m_bytes.data(), Size);
}

template <std::size_t Size> bool Secret<Size>::equals(const Secret &other) const
{
    return sodium_memcmp(m_bytes.data(), other.m_bytes.data(), Size) == 0;
}

template class Secret<10>;
template class Secret<32>;

} // namespace lidlark::crypto
