/* Whole numbers of 128 bits: exact products of lengths, counts and money. */
#ifndef SAWBILL_WIDE_H
#define SAWBILL_WIDE_H

__extension__ typedef __int128 wide_t;

/* Quotient rounded half away from zero; divisor > 0. */
wide_t divide_round(wide_t value, wide_t divisor);

#endif
